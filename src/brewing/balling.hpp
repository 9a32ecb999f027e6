#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

// Balling's balance: 2.0665 g of extract give 1 g of alcohol, 0.9565 g of carbon dioxide and 0.11 g of yeast.
// Source of all in this file unless said otherwise: Balling, Die Bierbrauerei, 1865, by way of Cutaia, Reid &
// Speers, Examination of the relationships between original, real and apparent extracts, and alcohol in pilot
// plant and commercially produced beers, Journal of the Institute of Brewing 115, 2009.
// Valid for 0..30 °P original extract and apparent extract down to -3 °P, as very dry beer has it.

/// Real extract: what an extract determination finds once the alcohol is gone. Error about 0.06 °P.
Extract real_extract(Extract original, Extract apparent);

/// The inverse of `real_extract`: what a hydrometer reads in beer of this real extract.
Extract apparent_extract(Extract original, Extract real);

/// Share of alcohol in the mass of the beer. Standard error 0.1 g/100 g at 12 °P: yeast growth varies.
Share alcohol_by_weight(Extract original, Extract real);

/// Original extract of a beer of which alcohol and real extract were measured.
Extract original_extract(Share alcohol_by_weight, Extract real);

/// Alcohol by volume at 20 °C of a beer of this share by weight and this final gravity.
AlcoholByVolume alcohol_by_volume(Share by_weight, SpecificGravity final_gravity);

/// Alcohol by volume from the two hydrometer readings by the exact balance. Standard error 0.13 % by volume
/// from the formula alone at 10 °P fermented; the readings add theirs.
AlcoholByVolume alcohol_by_volume(SpecificGravity original_gravity, SpecificGravity final_gravity);

/// Share fermented of the extract as a hydrometer shows it. May exceed one: sugar alone ferments to 1.23.
Attenuation apparent_attenuation(Extract original, Extract apparent);

/// Share of the extract that the yeast took, by concentrations, without the beer's loss of weight.
Attenuation real_attenuation(Extract original, Extract real);

/// The real degree of fermentation with allowance for the weight lost as carbon dioxide.
/// Source: American Society of Brewing Chemists, Methods of Analysis, Beer-6, from memory.
Attenuation real_degree_of_fermentation(Extract original, Extract real);

/// Real extract that is left when this share of the extract ferments. Shares of real attenuation may be
/// averaged over the sources of extract by mass; apparent ones may not.
Extract real_extract_after(Extract original, Attenuation real_attenuation);

}  // namespace entrywise
