#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "quantity/text.hpp"
#include "reading/fault_log.hpp"
#include "reading/node.hpp"
#include "recipe/ingredients.hpp"

namespace entrywise {

/// How a node is read as a value of a type; specialized for every type that data files hold. What is no such
/// value is told to the log and gives nothing. Quotation marks make no difference to what a text means.
template <class Value>
struct ReadAs;

/// A node as a message shows it: its text in quotes, or `a list`, `a map`.
std::string shown(const Node& node);

/// The text of a scalar, without blanks around it; a list, a map or an empty text is told as a fault.
std::optional<std::string_view> scalar_text(const Node& node, std::string_view expected, FaultLog& faults);

template <>
struct ReadAs<std::string> {
    static std::optional<std::string> from(const Node& node, FaultLog& faults);
};

/// `true` or `false`, and nothing else.
template <>
struct ReadAs<bool> {
    static std::optional<bool> from(const Node& node, FaultLog& faults);
};

/// A bare number, or a share in percent: `0.3`, `65 %`.
template <>
struct ReadAs<double> {
    static std::optional<double> from(const Node& node, FaultLog& faults);
};

/// A day of the calendar as year-month-day: `2026-10-01`.
template <>
struct ReadAs<std::chrono::sys_days> {
    static std::optional<std::chrono::sys_days> from(const Node& node, FaultLog& faults);
};

template <>
struct ReadAs<std::vector<std::string>> {
    static std::optional<std::vector<std::string>> from(const Node& node, FaultLog& faults);
};

/// One word of the intensity scale, or two with `..` between them.
template <>
struct ReadAs<LevelSpan> {
    static std::optional<LevelSpan> from(const Node& node, FaultLog& faults);
};

template <class Value>
std::optional<Value> value_in(Parsed<Value> parsed, const Node& node, FaultLog& faults) {
    if (const auto* fault = std::get_if<TextFault>(&parsed)) {
        faults.add(node.position, {.found = shown(node),
                                   .expected = fault->expected,
                                   .nearest = fault->nearest,
                                   .remedy = fault->remedy});
        return std::nullopt;
    }
    return std::get<Value>(std::move(parsed));
}

template <class Value, class Read>
std::optional<Value> parsed_value(const Node& node, std::string_view expected, FaultLog& faults, Read read) {
    const auto text = scalar_text(node, expected, faults);
    return text ? value_in<Value>(read(*text), node, faults) : std::nullopt;
}

template <class Quantity>
struct ReadAs {
    static std::optional<Quantity> from(const Node& node, FaultLog& faults) {
        return parsed_value<Quantity>(node, kind_of<Quantity>().name, faults, quantity_from<Quantity>);
    }
};

template <class Quantity>
struct ReadAs<Uncertain<Quantity>> {
    static std::optional<Uncertain<Quantity>> from(const Node& node, FaultLog& faults) {
        return parsed_value<Uncertain<Quantity>>(node, kind_of<Quantity>().name, faults,
                                                 uncertain_from<Quantity>);
    }
};

template <class Quantity>
struct ReadAs<Span<Quantity>> {
    static std::optional<Span<Quantity>> from(const Node& node, FaultLog& faults) {
        return parsed_value<Span<Quantity>>(node, kind_of<Quantity>().name, faults, span_from<Quantity>);
    }
};

template <class Quantity>
struct ReadAs<OpenSpan<Quantity>> {
    static std::optional<OpenSpan<Quantity>> from(const Node& node, FaultLog& faults) {
        return parsed_value<OpenSpan<Quantity>>(node, kind_of<Quantity>().name, faults,
                                                open_span_from<Quantity>);
    }
};

}  // namespace entrywise
