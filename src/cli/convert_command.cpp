#include <optional>
#include <string>
#include <utility>

#include "cli/commands.hpp"
#include "cli/each_input.hpp"
#include "cli/knowledge.hpp"
#include "cli/recipe_input.hpp"
#include "cli/streams.hpp"
#include "interchange/beerjson_writer.hpp"
#include "interchange/recipe_writer.hpp"
#include "report/conversion_json.hpp"
#include "report/conversion_text.hpp"

namespace entrywise {

namespace {

std::optional<StyleInWords> style_in_words(const Recipe& recipe, const Library& library) {
    const auto style = recipe.style ? library.style(*recipe.style).value : std::nullopt;
    return style ? std::optional(StyleInWords{style->name, style->category}) : std::nullopt;
}

/// What the call asks for, or else the other one of the two.
std::string target_of(const Call& call, const RecipeInput& input) {
    if (!call.to.empty()) {
        return call.to;
    }
    return input.is_recipe_file ? "beerjson" : "recipe";
}

WrittenExchange converted(const RecipeInput& input, const std::string& to, const Library& library) {
    if (to == "recipe") {
        return {recipe_file_text(input.document), {}};
    }
    return beerjson_text(input.recipe, style_in_words(input.recipe, library), library.ingredients());
}

Report report_of(const RecipeInput& input, const Call& call, const Library& library) {
    const std::string to = target_of(call, input);
    WrittenExchange written = converted(input, to, library);
    std::vector<Remark> remarks = input.remarks;
    remarks.insert(remarks.end(), written.remarks.begin(), written.remarks.end());
    Report report;
    if (call.format == Format::json) {
        report.document = conversion_json(input.recipe, to, written.text, remarks);
    } else {
        tell(conversion_text(remarks));
        report.text = std::move(written.text);
    }
    return report;
}

}  // namespace

ExitStatus convert_command(const Call& call) {
    const Outcome<Library> library = open_library_for(call);
    if (!library) {
        return report_faults(call, library.faults);
    }
    return report_on_each(call, [&](const std::string& word) -> Outcome<Report> {
        const Outcome<RecipeInput> input = recipe_input(word, *library, call.pick);
        return input ? Outcome<Report>(report_of(*input, call, *library)) : Outcome<Report>(input.faults);
    });
}

}  // namespace entrywise
