#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace entrywise {

/// A unit of an exchange standard, and what recipe files write for it.
struct ExchangeUnit {
    std::string_view unit;
    std::string_view spelling;
    double factor = 1.0;  ///< of the spelling in one of the unit
};

/// The units of BeerJSON 1.0, measureable_units.json, by the kind of the quantity. Those that recipe files
/// lack are written in one that they have. A standard's first spelling of a recipe file's unit is the one
/// that is written.
std::span<const ExchangeUnit> exchange_mass_units();
std::span<const ExchangeUnit> exchange_volume_units();
std::span<const ExchangeUnit> exchange_time_units();
std::span<const ExchangeUnit> exchange_temperature_units();
std::span<const ExchangeUnit> exchange_color_units();
std::span<const ExchangeUnit> exchange_gravity_units();
std::span<const ExchangeUnit> exchange_share_units();

/// The number with its unit as a recipe file writes it (`5.2` and `kg` give `5.2 kg`); nothing for a unit
/// that is none of these. The number's own digits stay where the unit does.
std::optional<std::string> amount_text(std::span<const ExchangeUnit> units, std::string_view number,
                                       std::string_view unit);

}  // namespace entrywise
