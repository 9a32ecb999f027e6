#include <fmt/format.h>

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "advice/ranking.hpp"
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/competition_named.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/recipe_input.hpp"
#include "cli/streams.hpp"
#include "judging/tasting.hpp"
#include "reading/competition_reader.hpp"
#include "reading/style_name.hpp"
#include "report/rank_json.hpp"
#include "report/rank_page.hpp"
#include "report/rank_text.hpp"

namespace entrywise {

namespace {

/// What beers are ranked over.
struct Field {
    std::vector<Style> styles;
    std::optional<Competition> competition;
};

/// The style of a code of the call, in the first of the guides that has it where it names none.
Outcome<Style> style_in(const Library& library, const std::vector<std::string>& guides,
                        const std::string& code) {
    if (code.find('/') != std::string::npos) {
        return style_called(library, code);
    }
    Outcome<Style> first = style_called(library, guides.front() + "/" + code);
    for (std::size_t index = 1; !first && index < guides.size(); ++index) {
        Outcome<Style> other = style_called(library, guides[index] + "/" + code);
        if (other) {
            return other;
        }
    }
    return first;
}

Fault not_accepted(const Style& style, const Competition& competition) {
    return {.place = {"command line", {}},
            .found = fmt::format("{}/{}", style.guide, style.code),
            .expected = "a style that " + competition.name + " accepts",
            .nearest = {},
            .remedy = {}};
}

/// The styles of the field whose codes the call names.
Outcome<std::vector<Style>> named_styles(const Call& call, const Library& library, const Field& field,
                                         const std::vector<std::string>& guides) {
    std::vector<Style> styles;
    std::vector<Fault> faults;
    for (const std::string& codes : call.among) {
        for (const std::string_view code : split(codes, ",")) {
            Outcome<Style> style = style_in(library, guides, std::string(trimmed(code)));
            if (!style) {
                faults.insert(faults.end(), style.faults.begin(), style.faults.end());
                continue;
            }
            if (field.competition) {
                if (!accepts(*field.competition, {style->guide, style->code})) {
                    faults.push_back(not_accepted(*style, *field.competition));
                }
                style.value->must_declare = declarations_asked(*field.competition, *style);
            }
            styles.push_back(*std::move(style.value));
        }
    }
    return faults.empty() ? Outcome<std::vector<Style>>(std::move(styles))
                          : Outcome<std::vector<Style>>(std::move(faults));
}

/// What the call wants to be ranked over: the styles of its guides, or those that a competition accepts, and
/// of these perhaps only some.
Outcome<Field> field_of(const Call& call, const Library& library) {
    Field field;
    if (!call.competition.empty()) {
        Outcome<Competition> competition = competition_named(call.competition, library);
        if (!competition) {
            return competition.faults;
        }
        field.competition = std::move(competition.value);
    }
    const std::vector<std::string> guides =
        guides_in(call.guide.empty() ? std::string(default_guide) : call.guide, library);
    Outcome<std::vector<Style>> styles = !call.among.empty() ? named_styles(call, library, field, guides)
                                         : field.competition ? styles_accepted(*field.competition, library)
                                                             : styles_of(library, guides);
    if (!styles) {
        return styles.faults;
    }
    field.styles = *std::move(styles.value);
    return field;
}

Report report_of(Recipe recipe, const Field& field, const Call& call, const Handbook& handbook) {
    if (!call.style.empty()) {
        recipe.style = style_name_from(call.style);
    }
    const Ranking ranking = rank(recipe, field.styles, handbook, recipe.style);
    Report report;
    if (call.format == Format::json) {
        report.document = rank_json(ranking, recipe, handbook.score_sheet, field.competition);
    } else if (call.format == Format::html) {
        const Beer beer = taste(recipe, handbook.perception).beer;
        report.article = rank_article(ranking, recipe, beer, field.styles, handbook.score_sheet);
    } else {
        report.text =
            rank_text(ranking, recipe, handbook.score_sheet, field.competition, text_style_for(call));
    }
    return report;
}

}  // namespace

ExitStatus rank_command(const Call& call) {
    const Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return report_faults(call, knowledge.faults);
    }
    const Outcome<Field> field = field_of(call, knowledge->library);
    if (!field) {
        return report_faults(call, field.faults);
    }
    if (!call.style.empty()) {
        if (const Outcome<Style> style = style_called(knowledge->library, call.style); !style) {
            return report_faults(call, style.faults);
        }
    }
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        Outcome<Recipe> recipe = recipe_named(word, knowledge->library, call.pick);
        return recipe
                   ? Outcome<Report>(report_of(*std::move(recipe.value), *field, call, knowledge->handbook))
                   : Outcome<Report>(recipe.faults);
    });
}

}  // namespace entrywise
