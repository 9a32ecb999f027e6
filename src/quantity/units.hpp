#pragma once

#include <limits>
#include <span>
#include <string_view>

#include "quantity/quantities.hpp"

namespace entrywise {

/// A way between what is written and the canonical value that no factor and offset can express. Each function
/// is the inverse of the other.
struct Curve {
    double (*canonical)(double written);
    double (*written)(double canonical);
};

/// One way of writing a quantity: `canonical = written * factor + offset`, or along a curve where there is
/// one. Canonical units are kg, m³, s, kg/m³, m³/s, m³/kg, K, SG, °P, % by volume, fraction (attenuation,
/// share), IBU, SRM, °L, volumes of CO2, million cells per mL and °P.
struct UnitSpelling {
    std::string_view spelling;
    double factor = 1.0;
    double offset = 0.0;
    const Curve* curve = nullptr;
    /// The canonical value from which on `to_text` chooses this unit by itself; by default it never does.
    double preferred_from = std::numeric_limits<double>::infinity();
    bool of_the_us = false;  ///< customary in the US and not metric, of masses, volumes and temperatures
};

/// What kind of quantity a type is: its name with article for messages (`a mass`), its spellings (the first
/// is the one that messages and `to_text` prefer), whether it may stand without a unit, and the span outside
/// which a value is no physical value of that kind (canonical units, ends included).
struct QuantityKind {
    std::string_view name;
    std::span<const UnitSpelling> units;
    bool unit_may_be_left_out = false;
    double lowest = 0.0;
    double highest = 0.0;
    /// Whether amounts in falling units add up: `4 lb 6 oz`.
    bool compound = false;
    /// Whether a number below zero can be written at all, as for degrees Celsius.
    bool may_be_negative = false;
};

/// The kind of each quantity type. Specialized for every quantity of `quantities.hpp` and for no other type.
template <class Quantity>
const QuantityKind& kind_of();

template <>
const QuantityKind& kind_of<Mass>();
template <>
const QuantityKind& kind_of<Volume>();
template <>
const QuantityKind& kind_of<Duration>();
template <>
const QuantityKind& kind_of<Temperature>();
template <>
const QuantityKind& kind_of<Concentration>();
template <>
const QuantityKind& kind_of<EvaporationRate>();
template <>
const QuantityKind& kind_of<OilContent>();
template <>
const QuantityKind& kind_of<SpecificGravity>();
template <>
const QuantityKind& kind_of<Extract>();
template <>
const QuantityKind& kind_of<AlcoholByVolume>();
template <>
const QuantityKind& kind_of<Attenuation>();
template <>
const QuantityKind& kind_of<Bitterness>();
template <>
const QuantityKind& kind_of<Color>();
template <>
const QuantityKind& kind_of<MaltColor>();
template <>
const QuantityKind& kind_of<Carbonation>();
template <>
const QuantityKind& kind_of<Share>();
template <>
const QuantityKind& kind_of<PitchRate>();

/// The canonical value of a number written in a unit, and back.
double canonical_of(const UnitSpelling& unit, double written);
double written_in(const UnitSpelling& unit, double canonical);

/// How much the canonical value changes with the written one, there: what a half width is scaled by. It is
/// the factor, and along a curve the mean slope over one written unit.
double slope_at(const UnitSpelling& unit, double canonical);

/// The unit of the kind that a text spells, or null. Case tells units apart only where two differ in nothing
/// else; `º` stands for `°`.
const UnitSpelling* unit_spelled(const QuantityKind& kind, std::string_view spelling);

/// The unit that `to_text` writes a canonical value in: the one spelled, or the preferred one for its size.
const UnitSpelling& unit_to_write(const QuantityKind& kind, double canonical, std::string_view spelling);

}  // namespace entrywise
