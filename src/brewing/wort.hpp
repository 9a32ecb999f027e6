#pragma once

#include <vector>

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/tracing.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The wort that is fermented, and how it came about.
struct Wort {
    Estimate<Volume> volume;         ///< into the fermenter, with the water that fruit brings
    Estimate<Volume> kettle_volume;  ///< at the end of the boil, as if cooled to 20 °C
    Estimate<Share> efficiency;  ///< of the brewhouse; what a measured gravity says of it, if there is one
    std::vector<Part<Mass>> extract;  ///< in the fermenter, by grist addition, in the order of the process
    Traced<SpecificGravity> original_gravity;  ///< with all that is added to the fermenter
    Estimate<SpecificGravity> boil_gravity;    ///< mean of the start and the end of the boil
};

/// Works out extract, volumes and gravities by a balance of extract mass. A measured original gravity
/// replaces the balance, and the extract of every addition is scaled to it.
Wort make_wort(const Process& process, const Measured& measured, Deviates& deviates);

}  // namespace entrywise
