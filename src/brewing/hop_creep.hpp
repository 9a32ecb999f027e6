#pragma once

#include <span>

#include "quantity/quantities.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// Hop creep: the share of what fermentation left of the extract that dry hops on live yeast make it ferment
/// after all, as their enzymes split dextrins. It rises with the rate and levels off, and takes weeks, fewer
/// in the warmth; the least of it comes about in the few days of a usual dry hop. Extracts of hops have no
/// such enzymes. Valid for 0..25 g/L at 0..25 °C. Error: `hop_creep_factor`. Source: Kirkpatrick and
/// Shellhammer, Evidence of dextrin hydrolyzing enzymes in Cascade hops, Journal of Agricultural and Food
/// Chemistry 66, 2018; 1 to 2 °P of apparent extract in weeks of warmth: Stokholm and Shellhammer, Hop creep,
/// technical brief of the Brewers Association, 2020, from memory. The course between is a working value.
Share hop_creep(Concentration dry_hops, Duration on_yeast, Temperature temperature);

/// How many times as much it may be, by cultivar, kiln and yeast.
inline constexpr Uncertain<Share> hop_creep_factor{100.0 * percent, 60.0 * percent};

/// The same of all dry hops of a recipe together, each for its own time on so much beer.
Share hop_creep(std::span<const HopAddition> hops, Volume beer, Temperature fermentation);

/// What these go on to free in two months in the warmth, where live yeast is there to ferment it, as in a
/// bottle.
Share hop_creep_to_come(std::span<const HopAddition> hops, Volume beer, Temperature fermentation);

}  // namespace entrywise
