#include "reading/style_name.hpp"

#include <string>

#include "base/text.hpp"

namespace entrywise {

std::optional<StyleName> style_name_from(std::string_view text) {
    const auto parts = split(text, "/");
    const bool code_alone = parts.size() == 1;
    const std::string_view guide = code_alone ? default_guide : parts.front();
    const std::string_view code = parts.back();
    if (parts.size() > 2 || guide.empty() || code.empty()) {
        return std::nullopt;
    }
    return StyleName{std::string(guide), std::string(code)};
}

}  // namespace entrywise
