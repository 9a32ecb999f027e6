#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// Fills in what the cold side and the other additions decide: time in the cold, filtering, finings,
/// nitrogen, salt, spice, dimethyl sulfide left from the boil.
void conditioning(const Recipe& recipe, const Process& process, const Wort& wort, Deviates& deviates,
                  Drivers& drivers);

}  // namespace entrywise
