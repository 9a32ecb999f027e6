#include "interchange/record.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "base/number.hpp"
#include "base/text.hpp"
#include "reading/source_text.hpp"
#include "reading/values.hpp"

namespace entrywise {

Record::Record(const Node& node, std::string path, ExchangeLog& log)
    : node_(node), path_(std::move(path)), log_(log) {
    if (node_.kind != NodeKind::map) {
        log_.faults().add(node_.position,
                          {.found = shown(node_),
                           .expected = path_.empty() ? "an object" : fmt::format("an object in {}", path_)});
    }
}

std::string Record::called(std::string_view key) const {
    return path_.empty() ? std::string(key) : fmt::format("{}.{}", path_, key);
}

void Record::refuse(const Node& node, std::string_view key, std::string_view expected) {
    log_.faults().add(node.position,
                      {.found = shown(node), .expected = fmt::format("{} for {}", expected, called(key))});
}

const Node* Record::find(std::string_view key) {
    asked_for_.push_back(key);
    const Node* const node = value_of(node_, key);
    const bool is_null =
        node != nullptr && node->kind == NodeKind::scalar && !node->quoted && node->text == "null";
    return is_null ? nullptr : node;
}

std::optional<Written> Record::text(std::string_view key) {
    auto text = lines(key);
    if (text) {
        std::replace_if(
            text->text.begin(), text->text.end(),
            [](char character) { return character == '\n' || character == '\r' || character == '\t'; }, ' ');
        text->text = std::string(trimmed(text->text));
    }
    return text && text->text.empty() ? std::nullopt : text;
}

std::optional<Written> Record::lines(std::string_view key) {
    const Node* const node = find(key);
    if (node == nullptr) {
        return std::nullopt;
    }
    if (node->kind != NodeKind::scalar || !node->quoted) {
        refuse(*node, key, "a text");
        return std::nullopt;
    }
    if (holds_control_character(node->text)) {
        log_.faults().add(node->position, {.found = "a control character in " + shown(*node),
                                           .expected = fmt::format("printable text for {}", called(key))});
        return std::nullopt;
    }
    const std::string_view text = trimmed(node->text);
    return text.empty() ? std::nullopt : std::optional(Written{std::string(text), node->position});
}

std::optional<Written> Record::number(std::string_view key) {
    const Node* const node = find(key);
    if (node == nullptr) {
        return std::nullopt;
    }
    if (node->kind != NodeKind::scalar || node->quoted || !number_from(node->text)) {
        refuse(*node, key, "a number");
        return std::nullopt;
    }
    return Written{node->text, node->position};
}

std::optional<bool> Record::truth(std::string_view key) {
    const Node* const node = find(key);
    if (node == nullptr) {
        return std::nullopt;
    }
    const bool is_truth =
        node->kind == NodeKind::scalar && !node->quoted && (node->text == "true" || node->text == "false");
    if (!is_truth) {
        refuse(*node, key, "true or false");
        return std::nullopt;
    }
    return node->text == "true";
}

std::optional<Written> Record::amount(std::string_view key, std::span<const ExchangeUnit> units) {
    const Node* const node = find(key);
    if (node == nullptr) {
        return std::nullopt;
    }
    if (node->kind != NodeKind::map) {
        refuse(*node, key, "an object with unit and value");
        return std::nullopt;
    }
    Record amount(*node, called(key), log_);
    const auto unit = amount.text("unit");
    const auto value = amount.number("value");
    if (!unit || !value) {
        if (amount.find("unit") == nullptr || amount.find("value") == nullptr) {
            refuse(*node, key, "both unit and value");
        }
        return std::nullopt;
    }
    const auto text = amount_text(units, value->text, unit->text);
    if (!text) {
        log_.remark(unit->position, RemarkKind::left_out,
                    fmt::format("{} of {} {}: its unit is not known here", called(key), value->text,
                                in_quotes(unit->text)));
        return std::nullopt;
    }
    return Written{*text, node->position};
}

std::string Record::unit_of(std::string_view key) {
    const Node* const node = find(key);
    const Node* const unit = node == nullptr ? nullptr : value_of(*node, "unit");
    return unit == nullptr ? std::string() : unit->text;
}

std::vector<const Node*> Record::items(std::string_view key) {
    std::vector<const Node*> items;
    const Node* const node = find(key);
    if (node != nullptr && node->kind != NodeKind::list) {
        refuse(*node, key, "a list");
    } else if (node != nullptr) {
        for (const Node& item : node->items) {
            items.push_back(&item);
        }
    }
    return items;
}

void Record::pass_over(std::initializer_list<std::string_view> keys) {
    asked_for_.insert(asked_for_.end(), keys);
}

void Record::leave_out_others(std::string_view repeating) {
    for (const Entry& entry : node_.entries) {
        const bool says_nothing =
            entry.value.kind == NodeKind::scalar && entry.value.quoted && trimmed(entry.value.text).empty();
        const bool repeats = !repeating.empty() && entry.key.starts_with(repeating);
        const bool is_asked_for =
            std::find(asked_for_.begin(), asked_for_.end(), entry.key) != asked_for_.end();
        if (!says_nothing && !repeats && !is_asked_for) {
            log_.leave_out_key(called(entry.key));
        }
    }
}

}  // namespace entrywise
