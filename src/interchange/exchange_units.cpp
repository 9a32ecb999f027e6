#include "interchange/exchange_units.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/number.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

namespace {

constexpr ExchangeUnit mass_units[] = {{"kg", "kg"}, {"g", "g"}, {"mg", "mg"}, {"lb", "lb"}, {"oz", "oz"}};

// US measures of capacity: NIST Handbook 44, appendix C, 2023; a barrel of beer holds 31 US or 36 imperial
// gallons (common practice). The imperial gallon: UK Units of Measurement Regulations, 1995.
constexpr double teaspoon = in(gallon, milliliter) / 768.0;
constexpr double beer_barrel_gallons = 31.0;
constexpr double imperial_gallon = 4.54609;
constexpr double imperial_barrel_gallons = 36.0;

constexpr ExchangeUnit volume_units[] = {
    {"l", "L"},
    {"ml", "mL"},
    {"gal", "gal"},
    {"qt", "qt"},
    {"floz", "fl oz"},
    {"tsp", "mL", teaspoon},
    {"tbsp", "mL", 3.0 * teaspoon},
    {"cup", "qt", 0.25},
    {"pt", "qt", 0.5},
    {"bbl", "gal", beer_barrel_gallons},
    {"ifloz", "L", imperial_gallon / 160.0},
    {"ipt", "L", imperial_gallon / 8.0},
    {"iqt", "L", imperial_gallon / 4.0},
    {"igal", "L", imperial_gallon},
    {"ibbl", "L", imperial_barrel_gallons* imperial_gallon},
};

constexpr ExchangeUnit time_units[] = {
    {"min", "min"}, {"hr", "h"}, {"day", "d"}, {"week", "wk"}, {"sec", "s"}};

constexpr ExchangeUnit temperature_units[] = {{"C", "C"}, {"F", "F"}};

constexpr ExchangeUnit color_units[] = {{"EBC", "EBC"}, {"Lovi", "L"}, {"SRM", "SRM"}};

// Degrees Brix and Plato are both percent of sucrose by mass; the tables differ by less than 0.01: common
// practice.
constexpr ExchangeUnit gravity_units[] = {{"sg", "SG"}, {"plato", "°P"}, {"brix", "°P"}};

constexpr ExchangeUnit share_units[] = {{"%", "%"}};

}  // namespace

std::span<const ExchangeUnit> exchange_mass_units() {
    return mass_units;
}

std::span<const ExchangeUnit> exchange_volume_units() {
    return volume_units;
}

std::span<const ExchangeUnit> exchange_time_units() {
    return time_units;
}

std::span<const ExchangeUnit> exchange_temperature_units() {
    return temperature_units;
}

std::span<const ExchangeUnit> exchange_color_units() {
    return color_units;
}

std::span<const ExchangeUnit> exchange_gravity_units() {
    return gravity_units;
}

std::span<const ExchangeUnit> exchange_share_units() {
    return share_units;
}

std::optional<std::string> amount_text(std::span<const ExchangeUnit> units, std::string_view number,
                                       std::string_view unit) {
    const auto found = std::find_if(units.begin(), units.end(),
                                    [&](const ExchangeUnit& known) { return known.unit == unit; });
    const auto value = number_from(number);
    if (found == units.end() || !value) {
        return std::nullopt;
    }
    const bool is_the_same = found->factor == 1.0;
    const std::string written = is_the_same ? std::string(number) : shortest(*value * found->factor);
    const bool stands_alone = found->spelling == "SG";
    return stands_alone ? written : fmt::format("{} {}", written, found->spelling);
}

}  // namespace entrywise
