#include <optional>
#include <utility>

#include "advice/explain.hpp"
#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/recipe_input.hpp"
#include "cli/scores_given.hpp"
#include "cli/streams.hpp"
#include "cli/style_entered.hpp"
#include "judging/specialty.hpp"
#include "reading/measured_reader.hpp"
#include "reading/remark_reader.hpp"
#include "report/explain_json.hpp"
#include "report/explain_page.hpp"
#include "report/explain_text.hpp"

namespace entrywise {

namespace {

/// All that the call says, read and checked before any recipe.
struct Asked {
    Knowledge knowledge;
    RemarkBook remarks;
    JudgedBeer judged;
    Measured measured;
};

Outcome<RemarkBook> remarks_from(const Library& library) {
    const std::string path = "styles/remarks.yaml";
    const Outcome<Node> document = library.document(path);
    return document ? read_remarks(*document, library.file_of(path)) : Outcome<RemarkBook>(document.faults);
}

Outcome<Asked> asked_by(const Call& call) {
    Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return knowledge.faults;
    }
    Outcome<RemarkBook> remarks = remarks_from(knowledge->library);
    Outcome<SectionScores> scores = scores_given(call, knowledge->handbook.score_sheet);
    Outcome<Measured> measured = read_measured(call.measured, "command line");
    std::vector<Fault> faults;
    for (const auto& found : {remarks.faults, scores.faults, measured.faults}) {
        faults.insert(faults.end(), found.begin(), found.end());
    }
    if (!faults.empty()) {
        return faults;
    }
    return Asked{*std::move(knowledge.value), *std::move(remarks.value), {call.notes, *scores}, *measured};
}

/// What the beer is held against, if the call or the recipe names a style. Points are compared by one alone.
Outcome<std::optional<Style>> style_held_against(const Recipe& recipe, const Call& call, const Asked& asked) {
    const bool named = !call.style.empty() || recipe.style.has_value();
    if (!named && call.scores.empty()) {
        return std::optional<Style>();
    }
    const Outcome<EnteredStyle> entered = style_entered(recipe, call, asked.knowledge);
    if (!entered) {
        return entered.faults;
    }
    const bool builds_on_a_base = entered->style.varies && entered->base_style;
    return std::optional(builds_on_a_base ? judged_style(entered->style, *entered->base_style)
                                          : entered->style);
}

Outcome<Report> report_of(Recipe recipe, const Call& call, const Asked& asked) {
    const Outcome<Measured> measured = measured_over(asked.measured, recipe.measured, recipe.file);
    if (!measured) {
        return measured.faults;
    }
    recipe.measured = *measured;
    const Outcome<std::optional<Style>> style = style_held_against(recipe, call, asked);
    if (!style) {
        return style.faults;
    }
    const Explanation explanation =
        explain(recipe, *style, asked.judged, asked.knowledge.handbook, asked.remarks);
    if (explanation.beer.final_gravity.median() > explanation.beer.original_gravity.total.median()) {
        return Fault{.place = {asked.measured.final_gravity ? "command line" : recipe.file, {}},
                     .found = "a measured gravity by which the beer is denser than its wort",
                     .expected = "a final gravity not above the original gravity of the recipe",
                     .nearest = {},
                     .remedy = "Check the measured values."};
    }
    Report report;
    if (call.format == Format::json) {
        report.document = explain_json(explanation);
    } else if (call.format == Format::html) {
        report.article = explain_article(explanation, asked.knowledge.handbook);
    } else {
        report.text = explain_text(explanation, asked.knowledge.handbook, text_style_for(call));
    }
    return report;
}

}  // namespace

ExitStatus explain_command(const Call& call) {
    const Outcome<Asked> asked = asked_by(call);
    if (!asked) {
        return report_faults(call, asked.faults);
    }
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<Recipe> recipe = recipe_named(word, asked->knowledge.library, call.pick);
        return recipe ? report_of(*recipe, call, *asked) : Outcome<Report>(recipe.faults);
    });
}

}  // namespace entrywise
