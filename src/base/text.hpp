#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace entrywise {

/// The text without blanks and tabs at either end.
std::string_view trimmed(std::string_view text);

/// ASCII letters in lower case, everything else as it is. For comparing names, never for display.
std::string lowered(std::string_view text);

/// The parts between separators, each trimmed. A text without the separator, and any text for an
/// empty separator, gives itself.
std::vector<std::string_view> split(std::string_view text, std::string_view separator);

/// The texts with a separator between them.
std::string joined(const std::vector<std::string>& texts, std::string_view separator);

/// The texts as a sentence lists them: `a`, `a or b`, `a, b or c`.
std::string listed(const std::vector<std::string>& texts, std::string_view last_separator = "or");

/// Whether a list of texts has the word in it.
template <class List>
bool contains(const List& texts, std::string_view word) {
    return std::find(texts.begin(), texts.end(), word) != texts.end();
}

/// Whether the byte is one of a UTF-8 character after its first.
constexpr bool is_continuation(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

/// Whether the bytes are well-formed UTF-8: no overlong forms, no surrogates, nothing above U+10FFFF.
bool is_utf8(std::string_view text);

/// How many characters (code points) the UTF-8 text holds.
std::size_t character_count(std::string_view text);

/// The text with control characters and characters that turn the writing direction shown as `\u{XX}`, so
/// that nothing from a file can steer a terminal. Bytes that are not UTF-8 are shown as `\x{XX}`.
std::string visible(std::string_view text);

/// The text broken at blanks into lines of at most `width` characters. A word longer than that stands alone.
std::vector<std::string> wrapped(std::string_view text, std::size_t width);

}  // namespace entrywise
