#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"

namespace entrywise {

/// Fills in what grist and sugars give to the nose, eye and palate: the concentrations of grain flavors, the
/// shares of adjuncts and of wheat-like grain. What is mashed gives its flavor as it gives its extract, so
/// that a gram counts by the brewhouse efficiency over a usual one of 72 % (working value).
void grain_character(const Process& process, const Wort& wort, std::size_t draws, Drivers& drivers);

}  // namespace entrywise
