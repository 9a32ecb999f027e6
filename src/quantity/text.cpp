#include "quantity/text.hpp"

#include <fmt/format.h>

#include <array>
#include <cstddef>

#include "base/text.hpp"
#include "quantity/amount.hpp"

namespace entrywise {

namespace {

struct Spread {
    double middle = 0.0;
    double half_width = 0.0;
};

struct Limits {
    std::optional<double> low;
    std::optional<double> high;
    bool below_high = false;
};

struct Sides {
    std::string_view left;
    std::string_view right;
};

std::optional<Sides> parted(std::string_view text, std::string_view separator) {
    const auto found = text.find(separator);
    if (found == std::string_view::npos) {
        return std::nullopt;
    }
    return Sides{trimmed(text.substr(0, found)), trimmed(text.substr(found + separator.size()))};
}

std::optional<Sides> parted_at_spread(std::string_view text) {
    for (const std::string_view sign : {"+-", "+/-", "±"}) {
        if (const auto sides = parted(text, sign)) {
            return sides;
        }
    }
    return std::nullopt;
}

template <class Value>
const TextFault* fault_in(const Parsed<Value>& parsed) {
    return std::get_if<TextFault>(&parsed);
}

template <class Value>
const Value& value_in(const Parsed<Value>& parsed) {
    return *std::get_if<Value>(&parsed);
}

Parsed<double> value_from(const QuantityKind& kind, std::string_view text) {
    const auto amount = amount_from(kind, text);
    if (const auto* fault = fault_in(amount)) {
        return *fault;
    }
    return canonical_of(kind, value_in(amount), nullptr);
}

/// A limit that is there, and the unit behind it; or a unit that stands alone where the limit is open (`8..
/// %`).
struct End {
    std::optional<Amount> amount;
    const UnitSpelling* unit = nullptr;
};

Parsed<End> end_from(const QuantityKind& kind, std::string_view text) {
    if (text.empty()) {
        return End{};
    }
    if (const auto* unit = unit_spelled(kind, text)) {
        return End{std::nullopt, unit};
    }
    const auto amount = amount_from(kind, text);
    if (const auto* fault = fault_in(amount)) {
        return *fault;
    }
    return End{value_in(amount), value_in(amount).unit()};
}

TextFault ends_exchanged(bool below_high) {
    return {.expected = below_high ? "a low end below the high end" : "a low end not above the high end",
            .nearest = {},
            .remedy = "Write the low end first."};
}

Parsed<Limits> limits_between(const QuantityKind& kind, const End& left, const End& right, bool below_high) {
    Limits limits{.low = {}, .high = {}, .below_high = below_high};
    if (left.amount) {
        const auto low = canonical_of(kind, *left.amount, right.unit);
        if (const auto* fault = fault_in(low)) {
            return *fault;
        }
        limits.low = value_in(low);
    }
    if (right.amount) {
        const auto high = canonical_of(kind, *right.amount, nullptr);
        if (const auto* fault = fault_in(high)) {
            return *fault;
        }
        limits.high = value_in(high);
    }
    const bool both = limits.low && limits.high;
    if (both && (*limits.low > *limits.high || (below_high && *limits.low == *limits.high))) {
        return ends_exchanged(below_high);
    }
    return limits;
}

Parsed<Limits> limits_from(const QuantityKind& kind, std::string_view text) {
    const auto sides = parted(text, "..");
    if (!sides) {
        const auto value = value_from(kind, text);
        if (const auto* fault = fault_in(value)) {
            return *fault;
        }
        return Limits{value_in(value), value_in(value), false};
    }
    const bool below_high = sides->right.starts_with('<');
    const auto left = end_from(kind, sides->left);
    if (const auto* fault = fault_in(left)) {
        return *fault;
    }
    const auto right = end_from(kind, trimmed(sides->right.substr(below_high ? 1 : 0)));
    if (const auto* fault = fault_in(right)) {
        return *fault;
    }
    const bool low_missing = !value_in(left).amount;
    const bool high_missing = !value_in(right).amount;
    const bool unit_for_a_number = low_missing && value_in(left).unit != nullptr;
    if ((low_missing && high_missing) || (below_high && high_missing) || unit_for_a_number) {
        return TextFault{
            .expected = with_its_unit(kind), .nearest = {}, .remedy = "Give at least one end of the span."};
    }
    return limits_between(kind, value_in(left), value_in(right), below_high);
}

Parsed<Limits> closed_limits_from(const QuantityKind& kind, std::string_view text) {
    const auto limits = limits_from(kind, text);
    if (fault_in(limits) != nullptr) {
        return limits;
    }
    const Limits& found = value_in(limits);
    if (!found.low || !found.high || found.below_high) {
        return TextFault{.expected = fmt::format("{} or a span with both ends, low..high", kind.name),
                         .nearest = {},
                         .remedy = {}};
    }
    return found;
}

Parsed<Spread> spread_around(const QuantityKind& kind, const Sides& sides) {
    const auto half = amount_from(kind, sides.right);
    if (const auto* fault = fault_in(half)) {
        return *fault;
    }
    const auto amount = amount_from(kind, sides.left);
    if (const auto* fault = fault_in(amount)) {
        return *fault;
    }
    const auto middle = canonical_of(kind, value_in(amount), value_in(half).unit());
    if (const auto* fault = fault_in(middle)) {
        return *fault;
    }
    const auto half_width = half_width_of(kind, value_in(half), value_in(middle));
    if (const auto* fault = fault_in(half_width)) {
        return *fault;
    }
    return Spread{value_in(middle), value_in(half_width)};
}

Parsed<Spread> spread_from(const QuantityKind& kind, std::string_view text) {
    if (const auto sides = parted_at_spread(text)) {
        return spread_around(kind, *sides);
    }
    if (!parted(text, "..")) {
        const auto value = value_from(kind, text);
        if (const auto* fault = fault_in(value)) {
            return *fault;
        }
        return Spread{value_in(value), 0.0};
    }
    const auto limits = closed_limits_from(kind, text);
    if (const auto* fault = fault_in(limits)) {
        return *fault;
    }
    const double low = *value_in(limits).low;
    const double high = *value_in(limits).high;
    return Spread{(low + high) / 2.0, (high - low) / 2.0};
}

std::string text_of(const QuantityKind& kind, double canonical, std::string_view spelling) {
    const UnitSpelling& unit = unit_to_write(kind, canonical, spelling);
    return with_unit(kind, unit, number_in(unit, canonical));
}

std::string text_of(const QuantityKind& kind, const Spread& spread, std::string_view spelling) {
    if (spread.half_width == 0.0) {
        return text_of(kind, spread.middle, spelling);
    }
    const UnitSpelling& unit = unit_to_write(kind, spread.middle, spelling);
    const UnitSpelling difference{.spelling = unit.spelling, .factor = slope_at(unit, spread.middle)};
    return with_unit(
        kind, unit,
        fmt::format("{} +- {}", number_in(unit, spread.middle), number_in(difference, spread.half_width)));
}

std::string text_of(const QuantityKind& kind, const Limits& limits, std::string_view spelling) {
    // The lower end decides: a unit that cannot write it cannot write the span.
    const UnitSpelling& unit =
        unit_to_write(kind, limits.low ? *limits.low : limits.high.value_or(0.0), spelling);
    const std::string low = limits.low ? number_in(unit, *limits.low) : "";
    const std::string high = limits.high ? number_in(unit, *limits.high) : "";
    return with_unit(kind, unit, fmt::format("{}..{}{}", low, limits.below_high ? "<" : "", high));
}

template <class Quantity>
std::optional<double> canonical_if_any(const std::optional<Quantity>& quantity) {
    return quantity ? std::optional(quantity->value()) : std::nullopt;
}

template <class Quantity>
std::optional<Quantity> quantity_if_any(const std::optional<double>& canonical) {
    return canonical ? std::optional(Quantity::from_value(*canonical)) : std::nullopt;
}

}  // namespace

template <class Quantity>
Parsed<Quantity> quantity_from(std::string_view text) {
    const auto value = value_from(kind_of<Quantity>(), text);
    if (const auto* fault = fault_in(value)) {
        return *fault;
    }
    return Quantity::from_value(value_in(value));
}

template <class Quantity>
Parsed<Uncertain<Quantity>> uncertain_from(std::string_view text) {
    const auto spread = spread_from(kind_of<Quantity>(), text);
    if (const auto* fault = fault_in(spread)) {
        return *fault;
    }
    return Uncertain<Quantity>{Quantity::from_value(value_in(spread).middle),
                               DifferenceOf<Quantity>::from_value(value_in(spread).half_width)};
}

template <class Quantity>
Parsed<Span<Quantity>> span_from(std::string_view text) {
    const auto limits = closed_limits_from(kind_of<Quantity>(), text);
    if (const auto* fault = fault_in(limits)) {
        return *fault;
    }
    return Span<Quantity>{Quantity::from_value(*value_in(limits).low),
                          Quantity::from_value(*value_in(limits).high)};
}

template <class Quantity>
Parsed<OpenSpan<Quantity>> open_span_from(std::string_view text) {
    const auto limits = limits_from(kind_of<Quantity>(), text);
    if (const auto* fault = fault_in(limits)) {
        return *fault;
    }
    const Limits& found = value_in(limits);
    return OpenSpan<Quantity>{quantity_if_any<Quantity>(found.low), quantity_if_any<Quantity>(found.high),
                              found.below_high};
}

template <class Quantity>
std::string to_text(Quantity quantity, std::string_view spelling) {
    return text_of(kind_of<Quantity>(), quantity.value(), spelling);
}

template <class Quantity>
std::string to_text(const Uncertain<Quantity>& uncertain, std::string_view spelling) {
    return text_of(kind_of<Quantity>(), Spread{uncertain.middle.value(), uncertain.half_width.value()},
                   spelling);
}

template <class Quantity>
std::string to_text(const OpenSpan<Quantity>& span, std::string_view spelling) {
    return text_of(kind_of<Quantity>(),
                   Limits{canonical_if_any(span.low), canonical_if_any(span.high), span.below_high},
                   spelling);
}

// NOLINTBEGIN(bugprone-macro-parentheses): the argument is a type.
#define ENTRYWISE_TEXT_FORM_OF(Quantity)                                                  \
    template Parsed<Quantity> quantity_from<Quantity>(std::string_view);                  \
    template Parsed<Uncertain<Quantity>> uncertain_from<Quantity>(std::string_view);      \
    template Parsed<Span<Quantity>> span_from<Quantity>(std::string_view);                \
    template Parsed<OpenSpan<Quantity>> open_span_from<Quantity>(std::string_view);       \
    template std::string to_text<Quantity>(Quantity, std::string_view);                   \
    template std::string to_text<Quantity>(const Uncertain<Quantity>&, std::string_view); \
    template std::string to_text<Quantity>(const OpenSpan<Quantity>&, std::string_view);
// NOLINTEND(bugprone-macro-parentheses)

ENTRYWISE_TEXT_FORM_OF(Mass)
ENTRYWISE_TEXT_FORM_OF(Volume)
ENTRYWISE_TEXT_FORM_OF(Duration)
ENTRYWISE_TEXT_FORM_OF(Temperature)
ENTRYWISE_TEXT_FORM_OF(Concentration)
ENTRYWISE_TEXT_FORM_OF(EvaporationRate)
ENTRYWISE_TEXT_FORM_OF(OilContent)
ENTRYWISE_TEXT_FORM_OF(SpecificGravity)
ENTRYWISE_TEXT_FORM_OF(Extract)
ENTRYWISE_TEXT_FORM_OF(AlcoholByVolume)
ENTRYWISE_TEXT_FORM_OF(Attenuation)
ENTRYWISE_TEXT_FORM_OF(Bitterness)
ENTRYWISE_TEXT_FORM_OF(Color)
ENTRYWISE_TEXT_FORM_OF(MaltColor)
ENTRYWISE_TEXT_FORM_OF(Carbonation)
ENTRYWISE_TEXT_FORM_OF(Share)
ENTRYWISE_TEXT_FORM_OF(PitchRate)

#undef ENTRYWISE_TEXT_FORM_OF

}  // namespace entrywise
