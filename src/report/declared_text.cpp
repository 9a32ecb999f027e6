#include "report/declared_text.hpp"

#include <fmt/format.h>

#include "base/text.hpp"

namespace entrywise {

std::string declared_words_of(const std::vector<std::string>& names, const Style& style,
                              const std::vector<Declaration>& known) {
    std::vector<std::string> words;
    for (const std::string& name : names) {
        const Declaration declaration = declaration_named(known, name);
        const std::vector<std::string> choices = choices_in(declaration, style.code);
        words.push_back(choices.empty() ? declaration.said
                                        : fmt::format("{} ({})", declaration.said, listed(choices)));
    }
    return joined(words, "; ");
}

}  // namespace entrywise
