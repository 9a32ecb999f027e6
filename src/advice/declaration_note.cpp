#include "advice/declaration_note.hpp"

#include "base/text.hpp"

namespace entrywise {

std::string note_on_missing(const std::vector<Declaration>& missing, const Style& style) {
    std::vector<std::string> said;
    for (const Declaration& declaration : missing) {
        const std::vector<std::string> choices = choices_in(declaration, style.code);
        const std::string among = listed(choices, "or");
        const bool alone = missing.size() == 1;
        said.push_back(declaration.said +
                       (choices.empty() ? "" : (alone ? ": " + among : " (" + among + ")")));
    }
    return "The entry form must say " + listed(said, "and") +
           ". Without it a judge can only guess what to hold the beer against.";
}

std::string correction_of_missing(const std::vector<Declaration>& missing, const Style& style) {
    std::vector<std::string> entries;
    std::vector<std::string> lines;
    for (const Declaration& declaration : missing) {
        if (declaration.by_base_style) {
            lines.push_back("`base_style: " + style.guide + "/...`");
        } else {
            entries.push_back(declaration.keys.front() + ": ...");
        }
    }
    if (!entries.empty()) {
        lines.insert(lines.begin(), "`declares: {" + joined(entries, ", ") + "}`");
    }
    return "say it on the form, and write " + listed(lines, "and") + " into the recipe";
}

}  // namespace entrywise
