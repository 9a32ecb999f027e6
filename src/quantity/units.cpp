#include "quantity/units.hpp"

#include <cmath>
#include <string>

#include "base/text.hpp"
#include "quantity/plato.hpp"

namespace entrywise {

namespace {

// Measures of weight and capacity: NIST Handbook 44, appendix C, 2023.
constexpr UnitSpelling mass_units[] = {
    {.spelling = "kg", .factor = kilogram.value(), .preferred_from = kilogram.value()},
    {.spelling = "g", .factor = gram.value(), .preferred_from = 0.0},
    {.spelling = "lb", .factor = pound.value(), .of_the_us = true},
    {.spelling = "oz", .factor = ounce.value(), .of_the_us = true},
    {.spelling = "mg", .factor = milligram.value()},
    {.spelling = "lbs", .factor = pound.value(), .of_the_us = true},
    {.spelling = "pound", .factor = pound.value(), .of_the_us = true},
    {.spelling = "pounds", .factor = pound.value(), .of_the_us = true},
    {.spelling = "ounce", .factor = ounce.value(), .of_the_us = true},
    {.spelling = "ounces", .factor = ounce.value(), .of_the_us = true},
    {.spelling = "gram", .factor = gram.value()},
    {.spelling = "grams", .factor = gram.value()},
    {.spelling = "kilogram", .factor = kilogram.value()},
    {.spelling = "kilograms", .factor = kilogram.value()},
};

constexpr Volume quart = gallon / 4.0;
constexpr Volume fluid_ounce = gallon / 128.0;

constexpr UnitSpelling volume_units[] = {
    {.spelling = "L", .factor = liter.value(), .preferred_from = liter.value()},
    {.spelling = "mL", .factor = milliliter.value(), .preferred_from = 0.0},
    {.spelling = "gal", .factor = gallon.value(), .of_the_us = true},
    {.spelling = "qt", .factor = quart.value(), .of_the_us = true},
    {.spelling = "hL", .factor = hectoliter.value()},
    {.spelling = "fl oz", .factor = fluid_ounce.value(), .of_the_us = true},
    {.spelling = "m3", .factor = 1.0},
    {.spelling = "m³", .factor = 1.0},
    {.spelling = "liter", .factor = liter.value()},
    {.spelling = "liters", .factor = liter.value()},
    {.spelling = "gallon", .factor = gallon.value(), .of_the_us = true},
    {.spelling = "gallons", .factor = gallon.value(), .of_the_us = true},
    {.spelling = "quart", .factor = quart.value(), .of_the_us = true},
    {.spelling = "quarts", .factor = quart.value(), .of_the_us = true},
};

constexpr UnitSpelling duration_units[] = {
    {.spelling = "min", .factor = minute.value(), .preferred_from = minute.value()},
    {.spelling = "h", .factor = hour.value(), .preferred_from = 2.0 * hour.value()},
    {.spelling = "d", .factor = day.value(), .preferred_from = 2.0 * day.value()},
    {.spelling = "wk", .factor = week.value()},
    {.spelling = "s", .factor = second.value(), .preferred_from = 0.0},
    {.spelling = "second", .factor = second.value()},
    {.spelling = "seconds", .factor = second.value()},
    {.spelling = "minute", .factor = minute.value()},
    {.spelling = "minutes", .factor = minute.value()},
    {.spelling = "hr", .factor = hour.value()},
    {.spelling = "hour", .factor = hour.value()},
    {.spelling = "hours", .factor = hour.value()},
    {.spelling = "day", .factor = day.value()},
    {.spelling = "days", .factor = day.value()},
    {.spelling = "week", .factor = week.value()},
    {.spelling = "weeks", .factor = week.value()},
};

constexpr double zero_fahrenheit_kelvin = ice_point_kelvin - ice_point_fahrenheit * fahrenheit_degree.value();

constexpr UnitSpelling temperature_units[] = {
    {.spelling = "C", .offset = ice_point_kelvin},
    {.spelling = "F",
     .factor = fahrenheit_degree.value(),
     .offset = zero_fahrenheit_kelvin,
     .of_the_us = true},
    {.spelling = "K"},
    {.spelling = "°C", .offset = ice_point_kelvin},
    {.spelling = "°F",
     .factor = fahrenheit_degree.value(),
     .offset = zero_fahrenheit_kelvin,
     .of_the_us = true},
};

// One part per million is one milligram in a liter of water: common practice for brewing water.
constexpr UnitSpelling concentration_units[] = {
    {.spelling = "g/L", .factor = gram_per_liter.value(), .preferred_from = gram_per_liter.value()},
    {.spelling = "mg/L", .factor = milligram_per_liter.value(), .preferred_from = 0.0},
    {.spelling = "oz/gal", .factor = ounce.value() / gallon.value()},
    {.spelling = "ppm", .factor = milligram_per_liter.value()},
};

constexpr UnitSpelling evaporation_units[] = {
    {.spelling = "L/h", .factor = liter_per_hour.value()},
    {.spelling = "gal/h", .factor = gallon.value() / hour.value()},
    {.spelling = "L/hr", .factor = liter_per_hour.value()},
    {.spelling = "gal/hr", .factor = gallon.value() / hour.value()},
};

constexpr UnitSpelling oil_units[] = {
    {.spelling = "mL/100g", .factor = milliliter_per_100_gram.value()},
    {.spelling = "mL/100 g", .factor = milliliter_per_100_gram.value()},
};

double gravity_of_plato(double degrees) {
    return specific_gravity_of(Extract::from_value(degrees)).value();
}

double plato_of_gravity(double gravity) {
    return extract_of(SpecificGravity::from_value(gravity)).value();
}

constexpr Curve plato_to_gravity = {.canonical = gravity_of_plato, .written = plato_of_gravity};

constexpr UnitSpelling gravity_units[] = {
    {.spelling = "SG"},
    {.spelling = "°P", .curve = &plato_to_gravity},
    {.spelling = "P", .curve = &plato_to_gravity},
    {.spelling = "Plato", .curve = &plato_to_gravity},
};

// Degrees Brix are percent of sucrose by mass too; the tables differ by less than 0.01: common practice.
constexpr UnitSpelling extract_units[] = {
    {.spelling = "°P"},  {.spelling = "P"},  {.spelling = "Plato"},
    {.spelling = "°Bx"}, {.spelling = "Bx"}, {.spelling = "Brix"},
};

constexpr UnitSpelling alcohol_units[] = {
    {.spelling = "%"},    {.spelling = "% vol"}, {.spelling = "% ABV"},
    {.spelling = "%vol"}, {.spelling = "%ABV"},
};

constexpr UnitSpelling fraction_units[] = {{.spelling = "%", .factor = percent.value()}};

// The two units are taken as equal: common practice.
constexpr UnitSpelling bitterness_units[] = {{.spelling = "IBU"}, {.spelling = "EBU"}};

// SRM is ten times the absorbance at 430 nm in half an inch (12.7 mm), EBC 25 times that in 10 mm: ASBC,
// Methods of Analysis, Beer-10; EBC, Analytica, 9.6.
constexpr double srm_per_ebc = 12.7 / 25.0;

constexpr UnitSpelling color_units[] = {{.spelling = "SRM"}, {.spelling = "EBC", .factor = srm_per_ebc}};

// SRM = 1.3546 L - 0.76, as maltsters state both: ASBC, Methods of Analysis, Beer-10, and common practice.
constexpr double srm_per_lovibond = 1.3546;
constexpr double srm_below_lovibond = 0.76;
constexpr double lovibond_at_zero_srm = srm_below_lovibond / srm_per_lovibond;

constexpr UnitSpelling malt_color_units[] = {
    {.spelling = "L"},
    {.spelling = "EBC", .factor = srm_per_ebc / srm_per_lovibond, .offset = lovibond_at_zero_srm},
    {.spelling = "SRM", .factor = 1.0 / srm_per_lovibond, .offset = lovibond_at_zero_srm},
    {.spelling = "°L"},
    {.spelling = "Lovibond"},
};

// Grams of carbon dioxide in a liter at 0 °C and one atmosphere: common practice.
constexpr double gram_per_liter_a_volume = 1.964;

constexpr UnitSpelling carbonation_units[] = {
    {.spelling = "vol"},
    {.spelling = "g/L", .factor = 1.0 / gram_per_liter_a_volume},
    {.spelling = "volumes"},
};

constexpr UnitSpelling pitch_rate_units[] = {
    {.spelling = "M/mL/P"},
    {.spelling = "M/mL/°P"},
};

// The spans of physical values are working values: wide enough for any brewery, narrow enough to catch a
// slip.
constexpr QuantityKind mass_kind = {.name = "a mass", .units = mass_units, .highest = 1e5, .compound = true};
constexpr QuantityKind volume_kind = {
    .name = "a volume", .units = volume_units, .highest = 1e3, .compound = true};
constexpr QuantityKind duration_kind = {
    .name = "a duration", .units = duration_units, .highest = 1e4 * day.value(), .compound = true};
constexpr QuantityKind temperature_kind = {.name = "a temperature",
                                           .units = temperature_units,
                                           .lowest = ice_point_kelvin - 10.0,
                                           .highest = ice_point_kelvin + 150.0,
                                           .may_be_negative = true};
constexpr QuantityKind concentration_kind = {
    .name = "a concentration", .units = concentration_units, .highest = 1e3};
constexpr QuantityKind evaporation_kind = {
    .name = "an evaporation rate", .units = evaporation_units, .highest = 1e5 * liter_per_hour.value()};
constexpr QuantityKind oil_kind = {
    .name = "an oil content", .units = oil_units, .highest = 120.0 * milliliter_per_100_gram.value()};
constexpr QuantityKind gravity_kind = {.name = "a specific gravity",
                                       .units = gravity_units,
                                       .unit_may_be_left_out = true,
                                       .lowest = 0.98,
                                       .highest = 1.25,
                                       .may_be_negative = true};
constexpr QuantityKind extract_kind = {
    .name = "an extract", .units = extract_units, .lowest = -3.0, .highest = 40.0, .may_be_negative = true};
constexpr QuantityKind alcohol_kind = {.name = "an alcohol content", .units = alcohol_units, .highest = 75.0};
constexpr QuantityKind attenuation_kind = {.name = "an attenuation", .units = fraction_units, .highest = 1.3};
constexpr QuantityKind bitterness_kind = {.name = "a bitterness", .units = bitterness_units, .highest = 1e3};
constexpr QuantityKind color_kind = {.name = "a color", .units = color_units, .highest = 500.0};
constexpr QuantityKind malt_color_kind = {.name = "a malt color", .units = malt_color_units, .highest = 1e3};
constexpr QuantityKind carbonation_kind = {
    .name = "a carbonation", .units = carbonation_units, .highest = 8.0};
constexpr QuantityKind share_kind = {.name = "a share", .units = fraction_units, .highest = 1.0};
constexpr QuantityKind pitch_rate_kind = {.name = "a pitch rate", .units = pitch_rate_units, .highest = 20.0};

std::string with_one_degree_sign(std::string_view spelling) {
    constexpr std::string_view ordinal_sign = "º";
    std::string result(spelling);
    for (auto found = result.find(ordinal_sign); found != std::string::npos;
         found = result.find(ordinal_sign)) {
        result.replace(found, ordinal_sign.size(), "°");
    }
    return result;
}

}  // namespace

template <>
const QuantityKind& kind_of<Mass>() {
    return mass_kind;
}
template <>
const QuantityKind& kind_of<Volume>() {
    return volume_kind;
}
template <>
const QuantityKind& kind_of<Duration>() {
    return duration_kind;
}
template <>
const QuantityKind& kind_of<Temperature>() {
    return temperature_kind;
}
template <>
const QuantityKind& kind_of<Concentration>() {
    return concentration_kind;
}
template <>
const QuantityKind& kind_of<EvaporationRate>() {
    return evaporation_kind;
}
template <>
const QuantityKind& kind_of<OilContent>() {
    return oil_kind;
}
template <>
const QuantityKind& kind_of<SpecificGravity>() {
    return gravity_kind;
}
template <>
const QuantityKind& kind_of<Extract>() {
    return extract_kind;
}
template <>
const QuantityKind& kind_of<AlcoholByVolume>() {
    return alcohol_kind;
}
template <>
const QuantityKind& kind_of<Attenuation>() {
    return attenuation_kind;
}
template <>
const QuantityKind& kind_of<Bitterness>() {
    return bitterness_kind;
}
template <>
const QuantityKind& kind_of<Color>() {
    return color_kind;
}
template <>
const QuantityKind& kind_of<MaltColor>() {
    return malt_color_kind;
}
template <>
const QuantityKind& kind_of<Carbonation>() {
    return carbonation_kind;
}
template <>
const QuantityKind& kind_of<Share>() {
    return share_kind;
}
template <>
const QuantityKind& kind_of<PitchRate>() {
    return pitch_rate_kind;
}

double canonical_of(const UnitSpelling& unit, double written) {
    return unit.curve != nullptr ? unit.curve->canonical(written) : written * unit.factor + unit.offset;
}

double written_in(const UnitSpelling& unit, double canonical) {
    return unit.curve != nullptr ? unit.curve->written(canonical) : (canonical - unit.offset) / unit.factor;
}

double slope_at(const UnitSpelling& unit, double canonical) {
    if (unit.curve == nullptr) {
        return unit.factor;
    }
    const double written = unit.curve->written(canonical);
    return unit.curve->canonical(written + 0.5) - unit.curve->canonical(written - 0.5);
}

const UnitSpelling* unit_spelled(const QuantityKind& kind, std::string_view spelling) {
    const std::string wanted = with_one_degree_sign(spelling);
    const UnitSpelling* but_for_case = nullptr;
    for (const UnitSpelling& unit : kind.units) {
        if (unit.spelling == wanted) {
            return &unit;
        }
        if (but_for_case == nullptr && lowered(unit.spelling) == lowered(wanted)) {
            but_for_case = &unit;
        }
    }
    return but_for_case;
}

const UnitSpelling& unit_to_write(const QuantityKind& kind, double canonical, std::string_view spelling) {
    const UnitSpelling* chosen = unit_spelled(kind, spelling);
    const bool unwritable = chosen != nullptr && !kind.may_be_negative && canonical >= 0.0 &&
                            written_in(*chosen, canonical) < 0.0;
    if (chosen != nullptr && !unwritable) {
        return *chosen;
    }
    chosen = &kind.units.front();
    if (canonical == 0.0) {
        return *chosen;
    }
    double start = -1.0;
    for (const UnitSpelling& unit : kind.units) {
        if (unit.preferred_from <= std::abs(canonical) && unit.preferred_from > start) {
            start = unit.preferred_from;
            chosen = &unit;
        }
    }
    return *chosen;
}

}  // namespace entrywise
