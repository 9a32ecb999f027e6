#include "cli/knowledge.hpp"

#include <optional>
#include <utility>

#include "reading/library_folders.hpp"
#include "reading/style_name.hpp"

namespace entrywise {

namespace {

std::optional<std::string> folder(const std::string& option) {
    return option.empty() ? std::nullopt : std::optional(option);
}

}  // namespace

Outcome<Library> open_library_for(const Call& call) {
    return open_library(embedded_documents(), {folder(call.styles_folder), folder(call.ingredients_folder)});
}

Outcome<Knowledge> knowledge_for(const Call& call) {
    Outcome<Library> library = open_library_for(call);
    return library ? knowledge_in(*std::move(library.value)) : Outcome<Knowledge>(library.faults);
}

Outcome<Style> style_called(const Library& library, const std::string& name) {
    // A text that is no name of a style at all still deserves the nearest one.
    const StyleName wanted = style_name_from(name).value_or(StyleName{std::string(default_guide), name});
    Outcome<Style> style = library.style(wanted);
    for (Fault& fault : style.faults) {
        if (fault.place.file.empty()) {
            fault.place.file = "command line";
        }
    }
    return style;
}

}  // namespace entrywise
