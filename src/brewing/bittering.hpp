#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// Bitterness as the laboratory reads it, with the hops it comes from, and as it tastes.
struct BitterBeer {
    Traced<Bitterness> read;
    Estimate<Bitterness> tasted;
};

/// Bitterness of the beer by the chain from alpha acids to the glass: solution, isomerization through boil,
/// stand and chill, survival, oxidized acids, dry hops. This is the default, as it agrees best with
/// laboratory values: see `kettle_bitterness.hpp`. What was measured replaces the sum; the shares of the
/// additions stay.
BitterBeer bittering(const Process& process, const Wort& wort, const Measured& measured, Deviates& deviates);

/// The same boil by the other published formulas, at the middle of every input.
OtherBitterness other_bitterness(const Process& process, const Wort& wort);

}  // namespace entrywise
