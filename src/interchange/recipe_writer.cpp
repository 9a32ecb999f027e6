#include "interchange/recipe_writer.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include "base/text.hpp"

namespace entrywise {

namespace {

constexpr std::array<std::string_view, 17> key_order{
    "format", "name", "style",  "base_style", "declares",     "volume",       "boil",  "efficiency", "mash",
    "grist",  "hops", "extras", "yeast",      "fermentation", "conditioning", "dates", "measured"};

std::size_t rank_of(const std::string& key) {
    return static_cast<std::size_t>(std::find(key_order.begin(), key_order.end(), key) - key_order.begin());
}

/// Whether a text means itself in YAML without quotation marks, inside brackets too.
bool may_stand_plain(std::string_view text) {
    constexpr std::string_view no_beginnings = "-?:,[]{}#&*!|>'\"%@`=<~ ";
    const bool harmless = !text.empty() && no_beginnings.find(text.front()) == std::string_view::npos &&
                          text.back() != ' ' && text.back() != ':';
    return harmless && text.find_first_of(",[]{}\"\\") == std::string_view::npos &&
           text.find(": ") == std::string_view::npos && text.find(" #") == std::string_view::npos &&
           visible(text) == text && lowered(text) != "null";
}

/// The bytes of the character that begins a text.
std::size_t character_size(std::string_view text) {
    const auto is_continuation = [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
    };
    std::size_t size = 1;
    while (size < text.size() && is_continuation(text[size])) {
        ++size;
    }
    return size;
}

/// A character as it stands in a quoted text. What could steer a terminal is written by its number.
std::string escaped(std::string_view character) {
    if (character == "\"" || character == "\\") {
        return '\\' + std::string(character);
    }
    const std::string shown = visible(character);
    if (shown == character) {
        return shown;
    }
    const std::size_t open = shown.find('{');
    const std::string number = shown.substr(open + 1, shown.find('}') - open - 1);
    return fmt::format("\\U{:0>8}", number);
}

std::string scalar(std::string_view text) {
    if (may_stand_plain(text)) {
        return std::string(text);
    }
    std::string quoted = "\"";
    while (!text.empty()) {
        const std::string_view character = text.substr(0, character_size(text));
        quoted += escaped(character);
        text.remove_prefix(character.size());
    }
    return quoted + '"';
}

std::string in_brackets(const Node& node) {
    std::vector<std::string> parts;
    switch (node.kind) {
        case NodeKind::scalar:
            return scalar(node.text);
        case NodeKind::list:
            for (const Node& item : node.items) {
                parts.push_back(in_brackets(item));
            }
            return '[' + joined(parts, ", ") + ']';
        case NodeKind::map:
            for (const Entry& entry : node.entries) {
                parts.push_back(scalar(entry.key) + ": " + in_brackets(entry.value));
            }
            return '{' + joined(parts, ", ") + '}';
    }
    return {};
}

}  // namespace

std::string recipe_file_text(const Node& document) {
    std::vector<const Entry*> entries;
    for (const Entry& entry : document.entries) {
        entries.push_back(&entry);
    }
    std::stable_sort(entries.begin(), entries.end(), [](const Entry* left, const Entry* right) {
        return rank_of(left->key) < rank_of(right->key);
    });
    std::string text;
    for (const Entry* const entry : entries) {
        if (entry->value.kind != NodeKind::list || entry->value.items.empty()) {
            text += fmt::format("{}: {}\n", scalar(entry->key), in_brackets(entry->value));
            continue;
        }
        text += scalar(entry->key) + ":\n";
        for (const Node& item : entry->value.items) {
            text += "  - " + in_brackets(item) + '\n';
        }
    }
    return text;
}

}  // namespace entrywise
