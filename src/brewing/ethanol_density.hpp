#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

// Mixtures of ethanol and water: the tables that distillates are sold by. Beer holds extract besides, so that
// a recipe's alcohol by volume follows from `balling.hpp` and not from here. Source: International
// Organization of Legal Metrology, Recommendation 22, International alcoholometric tables, 1975 (the same as
// directive 76/766/EEC).

/// Density of pure ethanol at 20 °C in the tables.
inline constexpr Concentration ethanol_density_at_20_celsius = 789.239 * gram_per_liter;

/// Density of a mixture with this share of ethanol by mass (0..1). Valid for -20..40 °C; the table is exact
/// to 0.001 kg/m³.
Concentration ethanol_mixture_density(Share ethanol_by_mass, Temperature temperature);

/// Alcohol by volume at 20 °C of a mixture with this share of ethanol by mass.
AlcoholByVolume ethanol_by_volume(Share ethanol_by_mass);

/// The share by mass of which `ethanol_by_volume` gives this alcohol by volume (0..100 %), to 1e-10.
Share ethanol_by_mass(AlcoholByVolume by_volume);

}  // namespace entrywise
