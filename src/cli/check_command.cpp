#include <cstddef>
#include <optional>
#include <vector>

#include "advice/check.hpp"
#include "advice/nearby_styles.hpp"
#include "base/number.hpp"
#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/recipe_input.hpp"
#include "cli/streams.hpp"
#include "cli/style_entered.hpp"
#include "report/check_json.hpp"
#include "report/check_page.hpp"
#include "report/check_text.hpp"

namespace entrywise {

namespace {

/// Decided on the points as they are printed.
ExitStatus status_of(const Sheet& sheet, const Call& call) {
    constexpr int printed_decimals = 1;
    const bool fails = call.fail_at && rounded(sheet.total.median, printed_decimals) >= *call.fail_at;
    return fails ? ExitStatus::findings : ExitStatus::done;
}

Outcome<Report> report_of(const Recipe& recipe, const Call& call, const Knowledge& knowledge) {
    const Outcome<EnteredStyle> entered = style_entered(recipe, call, knowledge);
    if (!entered) {
        return entered.faults;
    }
    const Check checked = check(recipe, entered->style, knowledge.handbook, entered->base_style);
    Report report;
    report.status = status_of(checked.sheet, call);
    if (call.format == Format::json) {
        report.document = check_json(checked, knowledge.handbook.score_sheet);
    } else if (call.format == Format::html) {
        constexpr std::size_t neighbors_drawn = 5;
        const Outcome<std::vector<Style>> styles = styles_of(knowledge.library, checked.style.guide);
        const std::vector<Style> nearby =
            styles ? nearby_styles(checked.beer, *styles, checked.style, neighbors_drawn)
                   : std::vector<Style>();
        report.article = check_article(checked, knowledge.handbook.score_sheet, nearby);
    } else {
        report.text = check_text(checked, knowledge.handbook.score_sheet, text_style_for(call));
    }
    return report;
}

}  // namespace

ExitStatus check_command(const Call& call) {
    const Outcome<Knowledge> knowledge = knowledge_for(call);
    if (!knowledge) {
        return report_faults(call, knowledge.faults);
    }
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<Recipe> recipe = recipe_named(word, knowledge->library, call.pick);
        return recipe ? report_of(*recipe, call, *knowledge) : Outcome<Report>(recipe.faults);
    });
}

}  // namespace entrywise
