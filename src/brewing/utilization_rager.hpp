#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Share of the alpha acids of a boil addition that is found in the beer as bitterness. Above a boil gravity
/// of 1.050 it falls with gravity. Valid for 0..90 min; gives 5 % for no boil at all. Reads high. Source:
/// Rager, Calculating hop bitterness in beer, Zymurgy special issue, 1990; curve through its table: common
/// practice.
Share rager_utilization(Duration boil, SpecificGravity gravity);

}  // namespace entrywise
