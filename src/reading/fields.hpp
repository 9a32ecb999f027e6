#pragma once

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "reading/fault_log.hpp"
#include "reading/node.hpp"
#include "reading/values.hpp"

namespace entrywise {

/// A word of a data file and what it stands for.
template <class Value>
struct Word {
    std::string_view word;
    Value value;
};

/// The keys of one map, read strictly: each is asked for once by its name and type, and whatever was never
/// asked for is told as unknown. Faults go to the log; reading goes on with the next key.
class Fields {
  public:
    /// `thing` is what the map describes, with its article, for messages: `a hop addition`.
    Fields(const Node& node, std::string thing, FaultLog& faults);

    Position position() const { return node_.position; }
    bool is_map() const { return node_.kind == NodeKind::map; }
    FaultLog& faults() const { return faults_; }

    /// The value of a key; null if it is left out.
    const Node* find(std::string_view key);

    /// The value of a key; if it is left out, that is a fault.
    const Node* need(std::string_view key);

    template <class Value>
    std::optional<Value> optional(std::string_view key) {
        const Node* node = find(key);
        return node == nullptr ? std::nullopt : ReadAs<Value>::from(*node, faults_);
    }

    /// The value, or the type's default after a fault.
    template <class Value>
    Value required(std::string_view key) {
        const Node* node = need(key);
        return node == nullptr ? Value() : ReadAs<Value>::from(*node, faults_).value_or(Value());
    }

    /// As `optional`, for a quantity that must lie between two others, ends included.
    template <class Value, class Quantity>
    std::optional<Value> optional_within(std::string_view key, Span<Quantity> limits) {
        const auto value = optional<Value>(key);
        return value && is_within(*find(key), low_of(*value), high_of(*value), limits) ? value : std::nullopt;
    }

    /// The texts of a list, none where the key is left out.
    std::vector<std::string> texts(std::string_view key) {
        return optional<std::vector<std::string>>(key).value_or(std::vector<std::string>());
    }

    /// As `optional`, for an amount of which there must be some.
    template <class Value>
    std::optional<Value> optional_amount(std::string_view key) {
        const auto value = optional<Value>(key);
        return value && is_some(*find(key), low_of(*value).value() > 0.0) ? value : std::nullopt;
    }

    /// As `required`, for an amount of which there must be some.
    template <class Value>
    Value required_amount(std::string_view key) {
        return need(key) == nullptr ? Value() : optional_amount<Value>(key).value_or(Value());
    }

    /// What one of a list of words stands for.
    template <class Value>
    std::optional<Value> optional_word(std::string_view key, std::span<const Word<Value>> words) {
        const Node* node = find(key);
        return node == nullptr ? std::nullopt : word_from(*node, words, faults_);
    }

    /// Tells every key that was never asked for, with the nearest one that was.
    void refuse_others();

    template <class Value>
    static std::optional<Value> word_from(const Node& node, std::span<const Word<Value>> words,
                                          FaultLog& faults) {
        if (node.kind == NodeKind::scalar) {
            const auto found = std::find_if(words.begin(), words.end(),
                                            [&](const Word<Value>& word) { return word.word == node.text; });
            if (found != words.end()) {
                return found->value;
            }
        }
        std::vector<std::string> known;
        for (const Word<Value>& word : words) {
            known.emplace_back(word.word);
        }
        refuse_word(node, known, faults);
        return std::nullopt;
    }

  private:
    template <class Quantity>
    static Quantity low_of(const Uncertain<Quantity>& value) {
        return value.middle - value.half_width;
    }
    template <class Quantity>
    static Quantity high_of(const Uncertain<Quantity>& value) {
        return value.middle + value.half_width;
    }
    template <class Quantity>
    static Quantity low_of(const Quantity& value) {
        return value;
    }
    template <class Quantity>
    static Quantity high_of(const Quantity& value) {
        return value;
    }

    template <class Quantity>
    bool is_within(const Node& node, Quantity low, Quantity high, Span<Quantity> limits) const {
        if (low >= limits.low && high <= limits.high) {
            return true;
        }
        faults_.add(node.position, {.found = shown(node),
                                    .expected = within_text(kind_of<Quantity>().name, to_text(limits.low),
                                                            to_text(limits.high))});
        return false;
    }

    static std::string within_text(std::string_view kind, const std::string& low, const std::string& high);
    bool is_some(const Node& node, bool more_than_nothing) const;
    static void refuse_word(const Node& node, const std::vector<std::string>& words, FaultLog& faults);

    const Node& node_;
    std::string thing_;
    FaultLog& faults_;
    std::vector<std::string_view>
        asked_for_;  ///< keys are literals or words of tables, which outlive any reading
};

/// Reads each item of a list; no items for a key that is left out.
template <class Read>
auto read_list(const Node* node, std::string_view expected, FaultLog& faults, Read read) {
    std::vector<std::decay_t<decltype(read(*node))>> values;
    if (node == nullptr) {
        return values;
    }
    if (node->kind != NodeKind::list) {
        faults.add(node->position, {.found = shown(*node),
                                    .expected = std::string(expected),
                                    .remedy = "Start each item with a dash, or put brackets around them."});
        return values;
    }
    values.reserve(node->items.size());
    for (const Node& item : node->items) {
        values.push_back(read(item));
    }
    return values;
}

/// Whether the map's `format:` line is `entrywise/<kind>/1`; told as a fault if not, and then nothing else of
/// the map is worth reading.
bool check_format(Fields& fields, std::string_view kind);

}  // namespace entrywise
