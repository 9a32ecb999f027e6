#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// Weeks that the beer spends at 8 °C or colder.
double weeks_cold(const Conditioning& conditioning);

/// Fills in what the cold side and the other additions decide: time in the cold, filtering, finings,
/// nitrogen, salt, spice, dimethyl sulfide left from the boil.
void conditioning(const Process& process, const Wort& wort, Deviates& deviates, Drivers& drivers);

}  // namespace entrywise
