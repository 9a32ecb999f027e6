#include "reading/fields.hpp"

#include <fmt/format.h>

#include "base/nearest_word.hpp"
#include "base/text.hpp"

namespace entrywise {

Fields::Fields(const Node& node, std::string thing, FaultLog& faults)
    : node_(node), thing_(std::move(thing)), faults_(faults) {
    constexpr std::size_t keys_of_most_maps = 16;
    asked_for_.reserve(keys_of_most_maps);
    if (!is_map()) {
        faults_.add(node.position, {.found = shown(node),
                                    .expected = fmt::format("{} as a map", thing_),
                                    .remedy = "Write keys and values: {key: value}, or one key a line."});
    }
}

const Node* Fields::find(std::string_view key) {
    if (std::find(asked_for_.begin(), asked_for_.end(), key) == asked_for_.end()) {
        asked_for_.emplace_back(key);
    }
    return value_of(node_, key);
}

const Node* Fields::need(std::string_view key) {
    const Node* node = find(key);
    if (node == nullptr && is_map()) {
        faults_.add(position(), {.found = fmt::format("{} without '{}'", thing_, key),
                                 .expected = fmt::format("the key '{}'", key)});
    }
    return node;
}

void Fields::refuse_others() {
    for (const Entry& entry : node_.entries) {
        if (std::find(asked_for_.begin(), asked_for_.end(), entry.key) == asked_for_.end()) {
            const std::vector<std::string> known(asked_for_.begin(), asked_for_.end());
            faults_.add(entry.key_position,
                        {.found = fmt::format("the key {}", in_quotes(entry.key)),
                         .expected = fmt::format("a key of {}: {}", thing_, listed(known)),
                         .nearest = nearest_word(entry.key, known)});
        }
    }
}

std::string Fields::within_text(std::string_view kind, const std::string& low, const std::string& high) {
    return fmt::format("{} from {} to {}", kind, low, high);
}

bool Fields::is_some(const Node& node, bool more_than_nothing) const {
    if (!more_than_nothing) {
        faults_.add(node.position, {.found = shown(node),
                                    .expected = "more than nothing",
                                    .remedy = "Give the amount, or leave the whole entry out."});
    }
    return more_than_nothing;
}

void Fields::refuse_word(const Node& node, const std::vector<std::string>& words, FaultLog& faults) {
    faults.add(node.position,
               {.found = shown(node), .expected = listed(words), .nearest = nearest_word(node.text, words)});
}

bool check_format(Fields& fields, std::string_view kind) {
    const Node* node = fields.find("format");
    if (!fields.is_map()) {
        return false;
    }
    const std::string expected = fmt::format("entrywise/{}/1", kind);
    if (node == nullptr) {
        fields.faults().add(fields.position(),
                            {.found = "no format line",
                             .expected = fmt::format("'format: {}'", expected),
                             .remedy = "Put it first: it says what the file holds and in which version."});
        return false;
    }
    if (node->kind == NodeKind::scalar && node->text == expected) {
        return true;
    }
    const bool other_version = node->text.starts_with(fmt::format("entrywise/{}/", kind));
    fields.faults().add(node->position, {.found = shown(*node),
                                         .expected = in_quotes(expected),
                                         .remedy = other_version ? "This program reads version 1 alone."
                                                                 : "Check that this is the right file."});
    return false;
}

}  // namespace entrywise
