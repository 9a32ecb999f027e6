#include "report/plain_ascii.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>

#include "base/text.hpp"

namespace entrywise {

namespace {

struct Spelling {
    std::string_view character;
    std::string_view plain;
};

constexpr std::array<Spelling, 51> spellings{{
    {"à", "a"}, {"á", "a"},  {"â", "a"},   {"ã", "a"},  {"ä", "a"},  {"å", "a"}, {"ç", "c"}, {"č", "c"},
    {"è", "e"}, {"é", "e"},  {"ê", "e"},   {"ë", "e"},  {"ě", "e"},  {"ì", "i"}, {"í", "i"}, {"î", "i"},
    {"ï", "i"}, {"ñ", "n"},  {"ò", "o"},   {"ó", "o"},  {"ô", "o"},  {"õ", "o"}, {"ö", "o"}, {"ø", "o"},
    {"ř", "r"}, {"š", "s"},  {"ß", "ss"},  {"ù", "u"},  {"ú", "u"},  {"û", "u"}, {"ü", "u"}, {"ý", "y"},
    {"ž", "z"}, {"Å", "A"},  {"Ä", "A"},   {"É", "E"},  {"Ö", "O"},  {"Ü", "U"}, {"°", ""},  {"–", "-"},
    {"—", "-"}, {"−", "-"},  {"…", "..."}, {"“", "\""}, {"”", "\""}, {"‘", "'"}, {"’", "'"}, {"·", "-"},
    {"×", "x"}, {"±", "+-"}, {"µ", "u"},
}};

bool is_ascii(char byte) {
    return static_cast<unsigned char>(byte) < 0x80U;
}

/// The code point of one well-formed UTF-8 character of two to four bytes.
std::uint32_t code_of(std::string_view character) {
    const unsigned first_bits = 0xFFU >> (character.size() + 1);
    std::uint32_t code = static_cast<unsigned char>(character.front()) & first_bits;
    for (const char byte : character.substr(1)) {
        code = (code << 6U) | (static_cast<unsigned char>(byte) & 0x3FU);
    }
    return code;
}

std::string plain_form_of(std::string_view character) {
    const auto* const known = std::find_if(spellings.begin(), spellings.end(), [&](const Spelling& spelling) {
        return spelling.character == character;
    });
    return known != spellings.end() ? std::string(known->plain)
                                    : fmt::format("\\u{{{:X}}}", code_of(character));
}

}  // namespace

std::string plain_ascii(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        if (is_ascii(text.front())) {
            result += text.front();
            text.remove_prefix(1);
            continue;
        }
        const auto* const end = std::find_if_not(text.begin() + 1, text.end(), is_continuation);
        const auto bytes = static_cast<std::size_t>(end - text.begin());
        result += plain_form_of(text.substr(0, bytes));
        text.remove_prefix(bytes);
    }
    return result;
}

}  // namespace entrywise
