#include "brewing/brew.hpp"
#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/recipe_input.hpp"
#include "cli/streams.hpp"
#include "report/estimate_json.hpp"
#include "report/estimate_text.hpp"

namespace entrywise {

namespace {

Report report_of(const Recipe& recipe, Format format, const TextStyle& style) {
    Deviates deviates(usual_draws);
    const Beer beer = brew(recipe, deviates);
    Report report;
    if (format == Format::json) {
        report.document = estimate_json(recipe, beer);
    } else {
        report.text = estimate_text(recipe, beer, style);
    }
    return report;
}

}  // namespace

ExitStatus estimate_command(const Call& call) {
    const Outcome<Library> library = open_library_for(call);
    if (!library) {
        return report_faults(call, library.faults);
    }
    const TextStyle style = text_style_for(call);
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<Recipe> recipe = recipe_named(word, *library, call.pick);
        return recipe ? Outcome<Report>(report_of(*recipe, call.format, style))
                      : Outcome<Report>(recipe.faults);
    });
}

}  // namespace entrywise
