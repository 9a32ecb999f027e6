#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"

namespace entrywise {

/// Fills in the hop aroma, hop flavor and hop matter that reach the glass. Aroma and flavor are told as so
/// many grams per liter of a light dry hop with 1.5 mL of oil in 100 g.
void hop_character(const Process& process, const Wort& wort, Deviates& deviates, Drivers& drivers);

}  // namespace entrywise
