#pragma once

#include <span>
#include <string>
#include <string_view>
#include <variant>

#include "quantity/quantities.hpp"

namespace entrywise {

/// One way of writing a quantity: `canonical = written * factor + offset`. Canonical units are kg, m³, s, kg/m³,
/// m³/s, m³/kg, K, SG, °P, % by volume, fraction (attenuation, share), IBU, SRM, °L, volumes of CO2.
struct UnitSpelling {
    std::string_view spelling;
    double factor = 1.0;
    double offset = 0.0;
};

/// What kind of quantity a type is: its name with article for messages (`a mass`), its spellings (the first is
/// the one that messages and `to_text` prefer), whether it may stand without a unit, and the span outside which
/// a value is no physical value of that kind (canonical units, ends included).
struct QuantityKind {
    std::string_view name;
    std::span<const UnitSpelling> units;
    bool unit_may_be_left_out = false;
    double lowest = 0.0;
    double highest = 0.0;
};

/// Why a text is no quantity: what would have been one, the unit meant if one is near, and how to mend it.
struct TextFault {
    std::string expected;
    std::string nearest;
    std::string remedy;
};

template <class Value>
using Parsed = std::variant<Value, TextFault>;

/// The kind of each quantity type. Specialized for every quantity of `quantities.hpp` and for no other type.
template <class Quantity>
const QuantityKind& kind_of();

/// A number with its unit: `5.2 kg`, `30g`, `4 lb 6 oz`, `1 h 30 min`, `150 F`, `1.062`, `12 °P` (also as a
/// specific gravity), `150 EBC` (malt or beer color), `72 %`, `2.5 vol`, `3.5 L/h`, `1.2 mL/100g`. Units are
/// case-sensitive only where case tells two apart (L for liter or Lovibond is told apart by the kind).
template <class Quantity>
Parsed<Quantity> quantity_from(std::string_view text);

/// A quantity with its spread: `5.5 +- 0.4 %`, `5.5 ± 0.4 %`, `5.0..6.0 %`, with the unit after the last number;
/// or a single value, whose half width is then zero.
template <class Quantity>
Parsed<Uncertain<Quantity>> uncertain_from(std::string_view text);

/// A span of values: `1.048..1.056`, `40..70 IBU`; a single value is a span of no width.
template <class Quantity>
Parsed<Span<Quantity>> span_from(std::string_view text);

/// The quantity in its preferred unit, or in the named spelling, as the shortest text that reads back as the same
/// value: `5.2 kg`, `1.062`, `38 IBU`.
template <class Quantity>
std::string to_text(Quantity quantity, std::string_view spelling = {});

/// The quantity with its spread, as `uncertain_from` reads it: `5.5 +- 0.4 %`; no spread is written where none is.
template <class Quantity>
std::string to_text(const Uncertain<Quantity>& uncertain, std::string_view spelling = {});

}  // namespace entrywise
