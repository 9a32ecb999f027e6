#include "quantity/amount.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

constexpr std::string_view digits = "0123456789";

bool is_alias(const UnitSpelling& unit, const UnitSpelling& other) {
    return unit.factor == other.factor && unit.offset == other.offset && unit.curve == other.curve;
}

std::vector<std::string> main_units(const QuantityKind& kind) {
    constexpr std::size_t most_shown = 4;
    std::vector<const UnitSpelling*> units;
    for (const UnitSpelling& unit : kind.units) {
        const bool known = std::any_of(units.begin(), units.end(),
                                       [&](const UnitSpelling* other) { return is_alias(unit, *other); });
        if (!known && units.size() < most_shown) {
            units.push_back(&unit);
        }
    }
    std::vector<std::string> spellings;
    spellings.reserve(units.size());
    for (const UnitSpelling* unit : units) {
        spellings.emplace_back(unit->spelling);
    }
    return spellings;
}

std::string nearest_unit(const QuantityKind& kind, std::string_view text) {
    std::vector<std::string> known;
    known.reserve(kind.units.size());
    for (const UnitSpelling& unit : kind.units) {
        known.emplace_back(unit.spelling);
    }
    return nearest_word(text, known);
}

struct UnitInFront {
    const UnitSpelling* unit = nullptr;
    std::string_view rest;
};

/// The unit at the front of a text: all of it, or what stands before the digit at which the next term begins.
std::optional<UnitInFront> leading_unit(const QuantityKind& kind, std::string_view text) {
    for (auto end = text.find_first_of(digits); kind.compound && end != std::string_view::npos;
         end = text.find_first_of(digits, end + 1)) {
        const auto start = end > 0 && text[end - 1] == '.' ? end - 1 : end;
        if (const auto* unit = unit_spelled(kind, trimmed(text.substr(0, start)))) {
            return UnitInFront{unit, text.substr(start)};
        }
    }
    if (const auto* unit = unit_spelled(kind, trimmed(text))) {
        return UnitInFront{unit, {}};
    }
    return std::nullopt;
}

TextFault no_such_unit(const QuantityKind& kind, std::string_view text) {
    const bool decimal_comma =
        text.size() > 1 && text[0] == ',' && digits.find(text[1]) != std::string_view::npos;
    return {.expected = with_its_unit(kind),
            .nearest = decimal_comma ? std::string() : nearest_unit(kind, text),
            .remedy = decimal_comma ? "Write a dot as the decimal mark." : ""};
}

bool in_falling_units(const std::vector<Term>& terms) {
    return std::is_sorted(terms.rbegin(), terms.rend(), [](const Term& smaller, const Term& larger) {
        return smaller.unit->factor <= larger.unit->factor;
    });
}

TextFault outside(const QuantityKind& kind, const UnitSpelling& unit, bool unit_was_written) {
    constexpr int significant = 6;
    const double floor = kind.may_be_negative ? -std::numeric_limits<double>::infinity() : 0.0;
    const double low = std::max(floor, written_in(unit, kind.lowest));
    const double high = written_in(unit, kind.highest);
    return {.expected =
                fmt::format("{} from {:.{}g} to {:.{}g}{}{}", kind.name, low, significant, high, significant,
                            unit_was_written ? " " : "", unit_was_written ? unit.spelling : ""),
            .nearest = {},
            .remedy = {}};
}

TextFault unit_missing(const QuantityKind& kind, const Amount& amount) {
    return {.expected = with_its_unit(kind),
            .nearest = {},
            .remedy = fmt::format("Put the unit behind the number, for instance {} {}.",
                                  shortest(amount.terms.front().number), kind.units.front().spelling)};
}

const UnitSpelling* unit_of(const QuantityKind& kind, const Amount& amount,
                            const UnitSpelling* unit_if_none) {
    if (amount.unit() != nullptr) {
        return amount.unit();
    }
    const UnitSpelling* bare = kind.unit_may_be_left_out ? &kind.units.front() : nullptr;
    return unit_if_none != nullptr ? unit_if_none : bare;
}

}  // namespace

Parsed<Amount> amount_from(const QuantityKind& kind, std::string_view text) {
    Amount amount;
    std::string_view rest = trimmed(text);
    do {
        const auto leading = leading_number(rest);
        if (!leading) {
            return TextFault{.expected = with_its_unit(kind), .nearest = {}, .remedy = {}};
        }
        rest = trimmed(leading->rest);
        if (rest.empty()) {
            amount.terms.push_back({leading->number, nullptr});
            break;
        }
        const auto unit = leading_unit(kind, rest);
        if (!unit) {
            return no_such_unit(kind, rest);
        }
        amount.terms.push_back({leading->number, unit->unit});
        rest = unit->rest;
    } while (!rest.empty());

    if (amount.terms.size() > 1 && amount.terms.back().unit == nullptr) {
        return unit_missing(kind, {{amount.terms.back()}});
    }
    if (!in_falling_units(amount.terms)) {
        return TextFault{.expected = fmt::format("{} with the larger unit first", kind.name),
                         .nearest = {},
                         .remedy = "Write each unit once."};
    }
    return amount;
}

Parsed<double> canonical_of(const QuantityKind& kind, const Amount& amount,
                            const UnitSpelling* unit_if_none) {
    const UnitSpelling* unit = unit_of(kind, amount, unit_if_none);
    if (unit == nullptr) {
        return unit_missing(kind, amount);
    }
    double canonical = 0.0;
    for (const Term& term : amount.terms) {
        canonical += canonical_of(term.unit != nullptr ? *term.unit : *unit, term.number);
    }
    // The ends of the span are given in another unit: conversion may miss them by a rounding.
    const double rounding = 1e-12 * (kind.highest - kind.lowest);
    const bool physical = canonical >= kind.lowest - rounding && canonical <= kind.highest + rounding;
    const bool negative = amount.terms.front().number < 0.0 && !kind.may_be_negative;
    if (!physical || negative) {
        return outside(kind, *unit, amount.unit() != nullptr || unit_if_none != nullptr);
    }
    return std::clamp(canonical, kind.lowest, kind.highest);
}

Parsed<double> half_width_of(const QuantityKind& kind, const Amount& amount, double middle) {
    const UnitSpelling* unit = unit_of(kind, amount, nullptr);
    if (unit == nullptr) {
        return unit_missing(kind, amount);
    }
    double half_width = 0.0;
    for (const Term& term : amount.terms) {
        half_width += term.number * slope_at(term.unit != nullptr ? *term.unit : *unit, middle);
    }
    const double widest = kind.highest - kind.lowest;
    if (!(amount.terms.front().number >= 0.0 && half_width <= widest)) {
        return TextFault{
            .expected = fmt::format("a half width from 0 to {:.6g}{}{}", widest / slope_at(*unit, middle),
                                    amount.unit() != nullptr ? " " : "",
                                    amount.unit() != nullptr ? unit->spelling : ""),
            .nearest = {},
            .remedy = {}};
    }
    return half_width;
}

std::string with_its_unit(const QuantityKind& kind) {
    return fmt::format("{} {} ({})", kind.name,
                       kind.unit_may_be_left_out ? "alone or with its unit" : "with its unit",
                       joined(main_units(kind), ", "));
}

std::string number_in(const UnitSpelling& unit, double canonical) {
    constexpr int most_decimals = 20;
    constexpr double same = 1e-12;
    const double written = written_in(unit, canonical);
    const double clearly_another = 1e-9 * std::max(std::abs(written), 1.0);
    for (int decimals = 0; decimals <= most_decimals; ++decimals) {
        // Most are told from the number by calculating, which takes less time than to write and read them.
        if (std::abs(rounded(written, decimals) - written) > clearly_another) {
            continue;
        }
        std::string text = fixed(written, decimals);
        const auto number = number_from(text);
        if (number && std::abs(canonical_of(unit, *number) - canonical) <= same * std::abs(canonical)) {
            return text;
        }
    }
    return shortest(written);
}

std::string with_unit(const QuantityKind& kind, const UnitSpelling& unit, const std::string& number) {
    const bool alone = kind.unit_may_be_left_out && &unit == &kind.units.front();
    return alone ? number : fmt::format("{} {}", number, unit.spelling);
}

}  // namespace entrywise
