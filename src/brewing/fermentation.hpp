#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// What fermentation leaves of the wort.
struct Fermented {
    Estimate<SpecificGravity> final_gravity;
    Estimate<Extract> original_extract;
    Estimate<Extract> apparent_extract;
    Estimate<Extract> real_extract;
    Estimate<Attenuation> apparent_attenuation;
    Estimate<AlcoholByVolume> alcohol;
};

/// Ferments the wort: the fermentable share of every source of extract, by real attenuation, times what the
/// yeast makes of it and what dry hops make fermentable; stress in strong wort and the yeast's limit of
/// alcohol lower it. Diastatic yeast and Brettanomyces take dextrins too, so that their attenuation holds
/// whatever the mash. What was measured replaces what would be estimated. Final gravity is good to about
/// 0.002 at 1.050, less in strong wort.
Fermented ferment(const Process& process, const Wort& wort, const Measured& measured, Deviates& deviates);

}  // namespace entrywise
