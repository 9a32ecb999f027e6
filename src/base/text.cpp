#include "base/text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

namespace entrywise {

namespace {

struct Character {
    char32_t code = 0;
    std::size_t bytes = 1;
    bool well_formed = false;
};

Character multi_byte_character(std::string_view text, std::size_t bytes, char32_t first_bits,
                               char32_t lowest) {
    if (text.size() < bytes) {
        return {};
    }
    char32_t code = first_bits;
    for (std::size_t index = 1; index < bytes; ++index) {
        if (!is_continuation(text[index])) {
            return {};
        }
        code = (code << 6U) | (static_cast<unsigned char>(text[index]) & 0x3FU);
    }
    const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    if (code < lowest || code > 0x10FFFF || surrogate) {
        return {};
    }
    return {code, bytes, true};
}

Character first_character(std::string_view text) {
    const auto first = static_cast<unsigned char>(text.front());
    if (first < 0x80U) {
        return {first, 1, true};
    }
    if ((first & 0xE0U) == 0xC0U) {
        return multi_byte_character(text, 2, first & 0x1FU, 0x80);
    }
    if ((first & 0xF0U) == 0xE0U) {
        return multi_byte_character(text, 3, first & 0x0FU, 0x800);
    }
    if ((first & 0xF8U) == 0xF0U) {
        return multi_byte_character(text, 4, first & 0x07U, 0x10000);
    }
    return {};
}

bool steers_the_terminal(char32_t code) {
    const bool control = code < 0x20 || (code >= 0x7F && code < 0xA0);
    const bool direction = code == 0x061C || code == 0x200E || code == 0x200F ||
                           (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069);
    const bool line_end_or_mark = code == 0x2028 || code == 0x2029 || code == 0xFEFF;
    return control || direction || line_end_or_mark;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string lowered(std::string_view text) {
    std::string result(text);
    std::transform(result.begin(), result.end(), result.begin(), [](char letter) {
        return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    });
    return result;
}

std::vector<std::string_view> split(std::string_view text, std::string_view separator) {
    if (separator.empty()) {
        return {trimmed(text)};
    }
    std::vector<std::string_view> parts;
    std::size_t start = 0;
    for (auto found = text.find(separator); found != std::string_view::npos;
         found = text.find(separator, start)) {
        parts.push_back(trimmed(text.substr(start, found - start)));
        start = found + separator.size();
    }
    parts.push_back(trimmed(text.substr(start)));
    return parts;
}

std::string joined(const std::vector<std::string>& texts, std::string_view separator) {
    return fmt::format("{}", fmt::join(texts, separator));
}

std::string listed(const std::vector<std::string>& texts, std::string_view last_separator) {
    if (texts.size() < 2) {
        return texts.empty() ? std::string() : texts.front();
    }
    const std::vector<std::string> all_but_last(texts.begin(), texts.end() - 1);
    return fmt::format("{} {} {}", joined(all_but_last, ", "), last_separator, texts.back());
}

bool is_utf8(std::string_view text) {
    while (!text.empty()) {
        const Character character = first_character(text);
        if (!character.well_formed) {
            return false;
        }
        text.remove_prefix(character.bytes);
    }
    return true;
}

std::size_t character_count(std::string_view text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char byte) { return !is_continuation(byte); }));
}

std::string visible(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        const Character character = first_character(text);
        if (!character.well_formed) {
            result += fmt::format("\\x{{{:02X}}}", static_cast<unsigned char>(text.front()));
        } else if (steers_the_terminal(character.code)) {
            result += fmt::format("\\u{{{:X}}}", static_cast<std::uint32_t>(character.code));
        } else {
            result += text.substr(0, character.bytes);
        }
        text.remove_prefix(character.bytes);
    }
    return result;
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    std::vector<std::string> lines;
    for (const std::string_view word : split(text, " ")) {
        if (word.empty()) {
            continue;
        }
        const bool fits =
            !lines.empty() && character_count(lines.back()) + 1 + character_count(word) <= width;
        if (fits) {
            lines.back().append(" ").append(word);
        } else {
            lines.emplace_back(word);
        }
    }
    return lines;
}

}  // namespace entrywise
