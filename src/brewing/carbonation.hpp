#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/pressure.hpp>

#include "quantity/quantities.hpp"

namespace entrywise {

/// Pressure above that of the air at sea level, as a gauge shows it.
using GaugePressure = boost::units::quantity<boost::units::si::pressure>;
inline constexpr GaugePressure bar = GaugePressure::from_value(1e5);
/// Pound-force a square inch (NIST Special Publication 811, 2008).
inline constexpr GaugePressure pound_per_square_inch = GaugePressure::from_value(6894.757);

/// Carbon dioxide in one volume: the density of the gas at 0 °C and one atmosphere, as the trade takes it.
/// Source: common practice.
inline constexpr Concentration carbon_dioxide_in_one_volume = 1.964 * gram_per_liter;

Concentration carbon_dioxide_concentration(Carbonation carbonation);
Carbonation carbonation_of(Concentration carbon_dioxide);

// Carbonation of beer of about 4.2 g alcohol in 100 g and 6 °P of real extract, in equilibrium with pure
// carbon dioxide. Strong or sweet beer holds a little less. All agree within 0.05 volumes from -1 to 8 °C.

/// Valid for 0..60 psi and -1..40 °C; error 0.03 volumes to 8 °C.
/// Source: de Lange, Carbonation, web article, 2011.
Carbonation carbonation_at_equilibrium(GaugePressure pressure, Temperature temperature);
/// The pressure at which the above gives this carbonation; below zero where beer would take up gas from the
/// air.
GaugePressure equilibrium_pressure(Carbonation carbonation, Temperature temperature);

/// By the physical form of the dependence on temperature, which is fit for warm bottles. Reads 0.05 volumes
/// above the chart when cold. Source: Speers & MacIntosh, Carbon dioxide solubility in beer, Journal of the
/// American Society of Brewing Chemists 71, 2013, and the literature that they review.
Concentration dissolved_carbon_dioxide(GaugePressure pressure, Temperature temperature);
GaugePressure physical_equilibrium_pressure(Carbonation carbonation, Temperature temperature);

/// The quadratic form in use for kegs. Valid for -1..15 °C; at 30 °C it is up to 0.8 bar too low, so never
/// for the safety of bottles. Source: common practice, a fit to the chart of the American Society of Brewing
/// Chemists.
GaugePressure keg_pressure(Carbonation carbonation, Temperature temperature);

/// Pressure in a bottle at 20..40 °C: the higher of de Lange's and the physical form, with no credit for the
/// head space. Common beer bottles bear about 4 volumes.
GaugePressure bottle_pressure(Carbonation carbonation, Temperature temperature);

/// What beer holds at the end of fermentation, by the warmest temperature since; an open or purged vessel
/// holds less. Valid for 0..30 °C, error 0.1 volumes. Source: common practice of priming tables (Hibberd;
/// Draper).
Carbonation residual_carbonation(Temperature warmest_since_fermentation);

enum class PrimingSugar { glucose, glucose_monohydrate, sucrose };

/// Carbon dioxide that one gram of sugar gives, in grams, by the equation of fermentation alone. Source:
/// stoichiometry.
Share carbon_dioxide_yield(PrimingSugar sugar);

/// The same for extract, with what the yeast takes for itself. Source: Balling, Die Bierbrauerei, 1865, by
/// way of Cutaia, Reid & Speers, Journal of the Institute of Brewing 115, 2009: 0.9565 g from 2.0665 g.
Share carbon_dioxide_yield_of_extract();

/// Sugar that raises a volume of beer from one carbonation to a higher one; none if it is no higher. Real
/// yeast may want a tenth more.
Mass priming_sugar(PrimingSugar sugar, Volume beer, Carbonation residual, Carbonation wanted);

}  // namespace entrywise
