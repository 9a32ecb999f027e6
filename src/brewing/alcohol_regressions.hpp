#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

// Other forms of the alcohol of beer, to compare the exact balance of `balling.hpp` with. Share of alcohol in
// the mass of the beer, or percent by volume, as the form gives it.

/// Regression on 532 analyzed beers, 11..18 °P; standard error of the factor 0.0100.
/// Source: Cutaia, Reid & Speers, Examination of the relationships between original, real and apparent
/// extracts, and alcohol, Journal of the Institute of Brewing 115, 2009.
Share alcohol_by_regression(Extract original, Extract apparent);

/// Second-degree form of Balling's factor, equal to the exact balance within 0.1 % for 8..20 °P.
/// Source: de Lange, The alcohol content of beer and its attenuation, web article.
Share alcohol_by_de_lange(Extract original, Extract apparent);

/// Straight line in the fall of gravity: within 0.05 % to 1.060, 0.2 % low at 1.100. Source: common practice.
AlcoholByVolume alcohol_by_gravity_fall(SpecificGravity original_gravity, SpecificGravity final_gravity);

/// Reads 1.5 % high (relative) at 1.050 and 8 % at 1.100. Source: Hall, Brew by the numbers, Zymurgy, 1995.
AlcoholByVolume alcohol_by_hall(SpecificGravity original_gravity, SpecificGravity final_gravity);

}  // namespace entrywise
