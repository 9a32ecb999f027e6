#include "reading/source_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"

namespace entrywise {

namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::size_t block_bytes = 256;

std::string with_plain_line_ends(std::string_view bytes) {
    std::string text;
    text.reserve(bytes.size());
    for (std::size_t index = 0; index < bytes.size(); ++index) {
        const bool before_line_feed = index + 1 < bytes.size() && bytes[index + 1] == '\n';
        if (bytes[index] != '\r' || !before_line_feed) {
            text.push_back(bytes[index]);
        }
    }
    return text;
}

/// The bytes of the character that starts the text, or none where it is not UTF-8.
std::size_t character_size(std::string_view text) {
    for (std::size_t size = 1; size <= 4 && size <= text.size(); ++size) {
        if (is_utf8(text.substr(0, size))) {
            return size;
        }
    }
    return 0;
}

bool is_control(std::string_view character) {
    const auto first = static_cast<unsigned char>(character.front());
    if (character.size() == 1) {
        return (first < 0x20 && first != '\n' && first != '\t') || first == 0x7F;
    }
    return first == 0xC2 && static_cast<unsigned char>(character[1]) < 0xA0;
}

Flaw control_character(std::string_view character) {
    if (character == "\r") {
        return {.found = "a carriage return without a line feed",
                .expected = "lines that end with a line feed",
                .remedy = "Save the file with line ends as Unix or Windows writes them."};
    }
    return {.found = fmt::format("the control character {}", visible(character)),
            .expected = "printable text",
            .remedy = "Delete it."};
}

void check_character(std::string_view character, Position position, FaultLog& faults) {
    if (character == byte_order_mark) {
        faults.add(position, {.found = "a byte order mark inside the text",
                              .expected = "one at the start at most",
                              .remedy = "Delete the invisible character U+FEFF."});
    } else if (is_control(character)) {
        faults.add(position, control_character(character));
    }
}

void check_indentation(std::string_view line, Position start, FaultLog& faults) {
    const auto first = line.find_first_not_of(" \t");
    const bool blank = first == std::string_view::npos || line[first] == '#';
    const auto tab = line.substr(0, first).find('\t');
    if (!blank && tab != std::string_view::npos) {
        faults.add({start.line, static_cast<int>(tab) + 1}, {.found = "a tab in the indentation",
                                                             .expected = "spaces",
                                                             .remedy = "Indent with spaces only."});
    }
}

}  // namespace

SourceText::SourceText(std::string_view bytes) {
    if (bytes.starts_with(byte_order_mark)) {
        bytes.remove_prefix(byte_order_mark.size());
    }
    text_ = with_plain_line_ends(bytes);
    line_starts_.push_back(0);
    for (std::size_t index = 0; index < text_.size(); ++index) {
        if (text_[index] == '\n') {
            line_starts_.push_back(index + 1);
        }
    }
    std::size_t characters = 0;
    for (std::string_view rest = text_; !rest.empty();
         rest.remove_prefix(std::min(block_bytes, rest.size()))) {
        block_characters_.push_back(characters);
        characters += character_count(rest.substr(0, block_bytes));
    }
    block_characters_.push_back(characters);
}

std::size_t SourceText::characters_between(std::size_t from, std::size_t to) const {
    return to - from <= block_bytes ? character_count(std::string_view(text_).substr(from, to - from))
                                    : characters_before(to) - characters_before(from);
}

std::size_t SourceText::characters_before(std::size_t offset) const {
    const std::size_t block = offset / block_bytes;
    const std::string_view rest = std::string_view(text_).substr(block * block_bytes);
    return block_characters_[block] + character_count(rest.substr(0, offset - block * block_bytes));
}

std::size_t SourceText::line_index(std::size_t offset) const {
    const auto after = std::upper_bound(line_starts_.begin(), line_starts_.end(), offset);
    return static_cast<std::size_t>(after - line_starts_.begin()) - 1;
}

Position SourceText::position_at(std::size_t offset) const {
    const std::size_t end = std::min(offset, text_.size());
    const std::size_t index = line_index(end);
    const std::size_t column = characters_between(line_starts_[index], end);
    return {static_cast<int>(index) + 1, static_cast<int>(column) + 1};
}

std::string_view SourceText::line_at(std::size_t offset) const {
    const std::size_t start = line_starts_[line_index(std::min(offset, text_.size()))];
    const std::string_view rest = std::string_view(text_).substr(start);
    return rest.substr(0, rest.find('\n'));
}

bool holds_control_character(std::string_view text) {
    while (!text.empty()) {
        const std::size_t size = std::max<std::size_t>(character_size(text), 1);
        const std::string_view character = text.substr(0, size);
        if (character == byte_order_mark || is_control(character)) {
            return true;
        }
        text.remove_prefix(size);
    }
    return false;
}

void check_characters(const SourceText& source, FaultLog& faults) {
    const std::string_view text = source.text();
    Position position{1, 1};
    std::size_t offset = 0;
    while (offset < text.size()) {
        if (position.column == 1) {
            check_indentation(source.line_at(offset), position, faults);
        }
        const std::size_t size = character_size(text.substr(offset));
        if (size == 0) {
            faults.add(position, {.found = fmt::format("the byte {}", visible(text.substr(offset, 1))),
                                  .expected = "text in UTF-8",
                                  .remedy = "Save the file as UTF-8."});
            return;
        }
        const std::string_view character = text.substr(offset, size);
        check_character(character, position, faults);
        offset += size;
        ++position.column;
        if (character == "\n") {
            position = {position.line + 1, 1};
        }
    }
}

}  // namespace entrywise
