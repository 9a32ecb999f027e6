#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/frequency.hpp>

#include "quantity/quantities.hpp"

namespace entrywise {

/// Share that reacts per unit of time.
using Rate = boost::units::quantity<boost::units::si::frequency>;

/// First-order rates at which alpha acids turn into iso-alpha-acids and these into others.
struct RateConstants {
    Rate isomerization;
    Rate degradation;
};

/// The rates at a temperature. Measured at 90..130 °C, pH 5.2; below 90 °C an extrapolation, good for the
/// order of size to about 65 °C. Source: Malowicki & Shellhammer, Isomerization and degradation kinetics of
/// hop (Humulus lupulus) acids in a model wort-boiling system, Journal of Agricultural and Food Chemistry 53,
/// 2005.
RateConstants isomerization_rates(Temperature temperature);

/// Hop acids dissolved in wort.
struct HopAcids {
    Concentration alpha;
    Concentration iso_alpha;
};

/// What a time at one temperature makes of hop acids, whatever their amounts: each left share and the share
/// of alpha acids that ends as iso-alpha-acids. Between 0 and 1.
struct Isomerization {
    double alpha_left = 1.0;
    double alpha_to_iso = 0.0;
    double iso_left = 1.0;

    HopAcids applied_to(HopAcids acids) const;
    /// The effect of this time followed by another.
    Isomerization then(const Isomerization& next) const;
};

/// The exact solution for a time at constant rates, which may be equal.
Isomerization isomerization(Duration time, const RateConstants& rates);

}  // namespace entrywise
