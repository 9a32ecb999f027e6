#include "style/declaration.hpp"

#include <algorithm>

#include "style/variant.hpp"

namespace entrywise {

std::vector<std::string> choices_in(const Declaration& declaration, const std::string& code) {
    const auto found = declaration.choices.find(entered_code(code));
    return found == declaration.choices.end() ? std::vector<std::string>() : found->second;
}

Declaration declaration_named(const std::vector<Declaration>& known, const std::string& name) {
    const auto found =
        std::find_if(known.begin(), known.end(), [&](const Declaration& each) { return each.name == name; });
    if (found != known.end()) {
        return *found;
    }
    Declaration plain{.name = name, .said = "the " + name, .keys = {name}, .choices = {}};
    std::replace(plain.said.begin(), plain.said.end(), '-', ' ');
    return plain;
}

}  // namespace entrywise
