#include "page/question.hpp"

#include <fmt/format.h>

#include <optional>

namespace entrywise {

namespace {

std::optional<std::string> way_below(Position position, const Node& node);

/// The way through a part of a node, if what is looked for is that part or below it.
std::optional<std::string> way_through(Position position, const Node& part, const std::string& name) {
    if (part.position == position) {
        return name;
    }
    const auto below = way_below(position, part);
    return below ? std::optional(fmt::format("{}.{}", name, *below)) : std::nullopt;
}

std::optional<std::string> way_below(Position position, const Node& node) {
    for (std::size_t index = 0; index < node.items.size(); ++index) {
        if (auto way = way_through(position, node.items[index], std::to_string(index + 1))) {
            return way;
        }
    }
    for (const Entry& entry : node.entries) {
        if (entry.key_position == position) {
            return entry.key;
        }
        if (auto way = way_through(position, entry.value, entry.key)) {
            return way;
        }
    }
    return std::nullopt;
}

}  // namespace

std::string text_in(const Node& question, std::string_view key) {
    const Node* node = value_of(question, key);
    return node == nullptr || !node->quoted ? std::string() : node->text;
}

std::vector<std::string> texts_in(const Node& question, std::string_view key) {
    std::vector<std::string> texts;
    const Node* list = value_of(question, key);
    for (const Node& item : list == nullptr ? std::vector<Node>() : list->items) {
        if (item.quoted && !item.text.empty()) {
            texts.push_back(item.text);
        }
    }
    return texts;
}

std::string way_to(Position position, const Node& node) {
    return way_below(position, node).value_or("");
}

Fault missing_in_question(std::string_view key) {
    return {.place = {"the question", {}},
            .found = fmt::format("no '{}'", key),
            .expected = fmt::format("a question with '{}'", key),
            .nearest = {},
            .remedy = {}};
}

}  // namespace entrywise
