#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Density of water at 20 °C, to which specific gravity refers.
/// Source: International Organization of Legal Metrology, Recommendation 22, International alcoholometric
/// tables, 1975 (density of the mixture without alcohol).
inline constexpr Concentration water_density_at_20_celsius = 998.201 * gram_per_liter;

/// Density of pure, air-free water at one atmosphere. Valid for 0..150 °C, error below 0.01 kg/m³.
/// Wort follows its shrinkage to a few tenths of a percent (working value).
/// Source: Kell, Density, thermal expansivity, and compressibility of liquid water from 0 to 150 °C, Journal
/// of Chemical and Engineering Data 20, 1975.
Concentration water_density(Temperature temperature);

}  // namespace entrywise
