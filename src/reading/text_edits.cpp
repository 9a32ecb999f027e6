#include "reading/text_edits.hpp"

#include <algorithm>

#include "base/text.hpp"

namespace entrywise {

namespace {

constexpr std::string_view blanks = " \t";

/// The byte behind so many characters of a line.
std::size_t bytes_of(std::string_view line, std::size_t characters) {
    std::size_t bytes = 0;
    for (std::size_t count = 0; count < characters && bytes < line.size(); ++count) {
        do {
            ++bytes;
        } while (bytes < line.size() && (static_cast<unsigned char>(line[bytes]) & 0xC0U) == 0x80U);
    }
    return bytes;
}

/// Behind the quotation mark that ends the text in quotes at the front.
std::size_t quoted_size(std::string_view text) {
    const char mark = text.front();
    for (std::size_t index = 1; index < text.size(); ++index) {
        const bool doubled = mark == '\'' && text.substr(index).starts_with("''");
        const bool escape = mark == '"' && text[index] == '\\';
        if (doubled || escape) {
            ++index;
        } else if (text[index] == mark) {
            return index + 1;
        }
    }
    return text.size();
}

std::string with_windows_line_ends(std::string_view text) {
    std::string result;
    for (const char letter : text) {
        result += letter == '\n' ? std::string("\r\n") : std::string(1, letter);
    }
    return result;
}

}  // namespace

TextEdits::TextEdits(std::string_view text)
    : source_(text), windows_line_ends_(text.find("\r\n") != std::string_view::npos) {
    line_starts_.push_back(0);
    for (std::size_t index = 0; index < source_.text().size(); ++index) {
        if (source_.text()[index] == '\n') {
            line_starts_.push_back(index + 1);
        }
    }
}

std::size_t TextEdits::offset_of(Position position) const {
    const std::size_t start = line_starts_[static_cast<std::size_t>(std::max(position.line, 1)) - 1];
    return start +
           bytes_of(source_.line_at(start), static_cast<std::size_t>(std::max(position.column, 1)) - 1);
}

std::size_t TextEdits::line_start(std::size_t offset) const {
    return *(std::upper_bound(line_starts_.begin(), line_starts_.end(), offset) - 1);
}

/// Of the line's text, before its line feed.
std::size_t TextEdits::line_end(std::size_t offset) const {
    return std::min(source_.text().find('\n', offset), source_.text().size());
}

bool TextEdits::in_brackets(const Node& node) const {
    const std::size_t offset = offset_of(node.position);
    const char first = offset < source_.text().size() ? source_.text()[offset] : ' ';
    return first == '{' || first == '[';
}

/// Behind a node: its value, or the bracket that closes it.
std::size_t TextEdits::end_of(const Node& node) const {
    const std::string_view text = source_.text();
    const std::size_t start = offset_of(node.position);
    if (node.kind == NodeKind::scalar) {
        const std::string_view rest = text.substr(start);
        if (node.quoted && !rest.empty() && (rest.front() == '"' || rest.front() == '\'')) {
            return start + quoted_size(rest);
        }
        return start + node.text.size();
    }
    std::size_t end = start;
    for (const Node& item : node.items) {
        end = std::max(end, end_of(item));
    }
    for (const Entry& entry : node.entries) {
        end = std::max(end, end_of(entry.value));
    }
    if (in_brackets(node)) {
        const char closing = node.kind == NodeKind::map ? '}' : ']';
        end = std::max(end, start + 1);
        while (end < text.size() && text[end] != closing) {
            end = text[end] == '#' ? line_end(end) : end + 1;
        }
        ++end;
    }
    return std::min(end, text.size());
}

std::string TextEdits::indentation_at(std::size_t offset) const {
    return std::string(offset - line_start(offset), ' ');
}

void TextEdits::replace(std::size_t from, std::size_t to, std::string text) {
    edits_.push_back({from, to, std::move(text)});
}

void TextEdits::set_scalar(const Node& scalar, const std::string& value) {
    const std::size_t start = offset_of(scalar.position);
    const std::size_t end = end_of(scalar);
    const bool plain = source_.text().compare(start, scalar.text.size(), scalar.text) == 0;
    if (scalar.kind != NodeKind::scalar || !(plain || scalar.quoted)) {
        possible_ = false;
        return;
    }
    replace(start, end, value);
}

void TextEdits::add_key(const Node& map, const std::string& key, const std::string& value) {
    const auto last = std::find_if(map.entries.rbegin(), map.entries.rend(),
                                   [](const Entry& entry) { return entry.value.kind == NodeKind::scalar; });
    if (last == map.entries.rend()) {
        possible_ = false;
        return;
    }
    const std::string text = key + ": " + value;
    const std::size_t end = end_of(last->value);
    if (in_brackets(map)) {
        replace(end, end, ", " + text);
    } else {
        const std::size_t at = line_end(end);
        replace(at, at, "\n" + indentation_at(offset_of(last->key_position)) + text);
    }
}

void TextEdits::add_line(const Node& map, const std::string& line) {
    if (in_brackets(map) || map.entries.empty()) {
        possible_ = false;
        return;
    }
    const std::size_t at = line_end(end_of(map.entries.back().value));
    replace(at, at, "\n" + indentation_at(offset_of(map.position)) + line);
}

void TextEdits::remove_lines(std::size_t from, std::size_t to) {
    const std::size_t start = line_start(from);
    const std::size_t end = line_end(to);
    const std::string_view behind = trimmed(std::string_view(source_.text()).substr(to, end - to));
    // A comment of the line's own is kept.
    if (behind.starts_with('#')) {
        replace(from, to + (source_.text().substr(to).find('#')), "");
        return;
    }
    replace(start, std::min(end + 1, source_.text().size()), "");
}

/// Takes a part of a list or map in brackets out together with one comma beside it.
void TextEdits::remove_between_commas(std::size_t from, std::size_t to) {
    const std::string_view text = source_.text();
    const std::size_t behind = text.find_first_not_of(" \t\n", to);
    if (behind != std::string_view::npos && text[behind] == ',') {
        std::size_t next = text.find_first_not_of(blanks, behind + 1);
        next = next == std::string_view::npos ? text.size() : next;
        replace(from, next, "");
        return;
    }
    const std::size_t before = text.find_last_not_of(" \t\n", from == 0 ? 0 : from - 1);
    const bool comma = before != std::string_view::npos && text[before] == ',';
    replace(comma ? before : from, to, "");
}

void TextEdits::remove_entry(const Node& map, const Entry& entry) {
    const std::size_t from = offset_of(entry.key_position);
    const std::size_t to = end_of(entry.value);
    if (in_brackets(map)) {
        remove_between_commas(from, to);
    } else {
        remove_lines(from, to);
    }
}

void TextEdits::replace_item(const Node& item, const std::string& flow_map) {
    replace(offset_of(item.position), end_of(item), flow_map);
}

void TextEdits::add_item(const Node& list, const std::string& flow_map) {
    if (list.kind != NodeKind::list || list.items.empty()) {
        possible_ = false;
        return;
    }
    const Node& last = list.items.back();
    const std::size_t end = end_of(last);
    if (in_brackets(list)) {
        replace(end, end, ", " + flow_map);
        return;
    }
    const std::size_t item = offset_of(last.position);
    const std::size_t dash = source_.text().rfind('-', item == 0 ? 0 : item - 1);
    const std::size_t at = line_end(end);
    replace(at, at, "\n" + indentation_at(dash) + "- " + flow_map);
}

void TextEdits::add_list(const Node& map, const std::string& key, const std::string& flow_map) {
    add_line(map, key + ":\n" + indentation_at(offset_of(map.position)) + "  - " + flow_map);
}

void TextEdits::remove_item(const Node& list, std::size_t index) {
    const Node& item = list.items[index];
    const std::size_t from = offset_of(item.position);
    const std::size_t to = end_of(item);
    if (in_brackets(list)) {
        remove_between_commas(from, to);
        return;
    }
    const std::size_t dash = source_.text().rfind('-', from == 0 ? 0 : from - 1);
    remove_lines(dash, to);
}

std::string TextEdits::result() const {
    std::vector<Edit> edits = edits_;
    std::stable_sort(edits.begin(), edits.end(),
                     [](const Edit& one, const Edit& other) { return one.from < other.from; });
    const std::string& text = source_.text();
    std::string result;
    std::size_t done = 0;
    for (const Edit& edit : edits) {
        if (edit.from >= done) {
            result.append(text, done, edit.from - done);
        }
        result += edit.text;
        done = std::max(done, edit.to);
    }
    result.append(text, done);
    return windows_line_ends_ ? with_windows_line_ends(result) : result;
}

}  // namespace entrywise
