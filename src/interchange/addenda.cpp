#include "interchange/addenda.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

#include "base/number.hpp"
#include "base/text.hpp"
#include "reading/fault_log.hpp"

namespace entrywise {

namespace {

constexpr std::string_view heading = "entrywise/recipe/1 also says:";
constexpr std::size_t deepest_path = 4;

/// The item that a word counts from one, or null.
Node* item_counted(Node& list, std::string_view word) {
    const auto number = number_from(word);
    const bool is_item = number && *number >= 1.0 && *number <= static_cast<double>(list.items.size());
    return is_item ? &list.items[static_cast<std::size_t>(*number) - 1] : nullptr;
}

/// The node that a path leads to, maps made on the way where there are none; null where it leads nowhere.
Node* node_at(Node& document, const std::vector<std::string_view>& path, Position position) {
    Node* node = &document;
    for (std::size_t index = 0; index + 1 < path.size() && node != nullptr; ++index) {
        if (node->kind == NodeKind::list) {
            node = item_counted(*node, path[index]);
            continue;
        }
        if (value_of(*node, path[index]) == nullptr) {
            put(*node, path[index], empty_map(position));
        }
        const auto entry = std::find_if(node->entries.begin(), node->entries.end(),
                                        [&](const Entry& candidate) { return candidate.key == path[index]; });
        node = entry->value.kind == NodeKind::scalar ? nullptr : &entry->value;
    }
    return node != nullptr && node->kind == NodeKind::map ? node : nullptr;
}

void apply(const DraftAddendum& addendum, Node& document, ExchangeLog& log) {
    const std::vector<std::string_view> path = split(addendum.path, ".");
    Node* const map = path.size() > deepest_path ? nullptr : node_at(document, path, addendum.text.position);
    if (map == nullptr) {
        log.faults().add(addendum.text.position,
                         {.found = fmt::format("{} in the notes", in_quotes(addendum.path)),
                          .expected = "a place that the recipe has",
                          .remedy = "Delete the line, or all from the heading on."});
    } else if (addendum.text.text == left_out_text) {
        take_out(*map, path.back());
    } else {
        put(*map, path.back(), node_of(addendum.text));
    }
}

}  // namespace

std::string notes_of(const std::vector<Statement>& statements) {
    if (statements.empty()) {
        return {};
    }
    std::string notes(heading);
    for (const Statement& statement : statements) {
        notes += fmt::format("\n{}: {}", statement.path, statement.text);
    }
    return notes;
}

bool holds_addenda(const std::string& notes) {
    return notes.find(heading) != std::string::npos;
}

std::vector<DraftAddendum> addenda_in(const Written& notes) {
    std::vector<DraftAddendum> addenda;
    const std::size_t start = notes.text.find(heading);
    if (start == std::string::npos) {
        return addenda;
    }
    for (const std::string_view line :
         split(std::string_view(notes.text).substr(start + heading.size()), "\n")) {
        const std::size_t colon = line.find(": ");
        if (colon != std::string_view::npos) {
            addenda.push_back({std::string(line.substr(0, colon)),
                               {std::string(trimmed(line.substr(colon + 2))), notes.position}});
        } else if (!line.empty()) {
            break;
        }
    }
    return addenda;
}

void apply(const std::vector<DraftAddendum>& addenda, Node& document, ExchangeLog& log) {
    for (const DraftAddendum& addendum : addenda) {
        apply(addendum, document, log);
    }
}

}  // namespace entrywise
