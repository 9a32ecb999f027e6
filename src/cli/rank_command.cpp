#include <string_view>
#include <utility>

#include "advice/ranking.hpp"
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/recipe_input.hpp"
#include "cli/streams.hpp"
#include "judging/tasting.hpp"
#include "reading/style_name.hpp"
#include "report/rank_json.hpp"
#include "report/rank_page.hpp"
#include "report/rank_text.hpp"

namespace entrywise {

namespace {

/// A code of the call, in the guide that the call names.
std::string in_guide(std::string_view code, const Call& call) {
    const std::string name(trimmed(code));
    const bool names_its_guide = name.find('/') != std::string::npos;
    return call.guide.empty() || names_its_guide ? name : call.guide + "/" + name;
}

/// The styles that the call names, or all of its guide.
Outcome<std::vector<Style>> styles_to_rank(const Call& call, const Library& library) {
    if (call.among.empty()) {
        return styles_of(library, call.guide.empty() ? std::string(default_guide) : call.guide);
    }
    std::vector<Style> styles;
    std::vector<Fault> faults;
    for (const std::string& codes : call.among) {
        for (const std::string_view code : split(codes, ",")) {
            Outcome<Style> style = style_called(library, in_guide(code, call));
            if (style) {
                styles.push_back(*std::move(style.value));
            } else {
                faults.insert(faults.end(), style.faults.begin(), style.faults.end());
            }
        }
    }
    return faults.empty() ? Outcome<std::vector<Style>>(std::move(styles))
                          : Outcome<std::vector<Style>>(std::move(faults));
}

Report report_of(const Recipe& recipe, const std::vector<Style>& styles, const Call& call,
                 const Handbook& handbook) {
    const auto declared = call.style.empty() ? recipe.style : style_name_from(call.style);
    const Ranking ranking = rank(recipe, styles, handbook, declared);
    Report report;
    if (call.format == Format::json) {
        report.document = rank_json(ranking, recipe, handbook.score_sheet);
    } else if (call.format == Format::html) {
        const Beer beer = taste(recipe, handbook.perception).beer;
        report.article = rank_article(ranking, recipe, beer, styles, handbook.score_sheet);
    } else {
        report.text = rank_text(ranking, recipe, handbook.score_sheet, text_style_for(call));
    }
    return report;
}

}  // namespace

ExitStatus rank_command(const Call& call) {
    const Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return report_faults(call, knowledge.faults);
    }
    const Outcome<std::vector<Style>> styles = styles_to_rank(call, knowledge->library);
    if (!styles) {
        return report_faults(call, styles.faults);
    }
    if (!call.style.empty()) {
        if (const Outcome<Style> style = style_called(knowledge->library, call.style); !style) {
            return report_faults(call, style.faults);
        }
    }
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<Recipe> recipe = recipe_named(word, knowledge->library.ingredients(), call.pick);
        return recipe ? Outcome<Report>(report_of(*recipe, *styles, call, knowledge->handbook))
                      : Outcome<Report>(recipe.faults);
    });
}

}  // namespace entrywise
