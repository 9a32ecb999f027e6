#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Share of the alpha acids of a boil addition that is found in the beer as bitterness. `gravity` is the mean
/// of the wort at the start and the end of the boil. Made with whole hops; valid for 0..90 min
/// and 1.030..1.100 in small brewhouses. Reads 0..25 % high below 300 mg/L of alpha acids and more above.
/// Source: Tinseth, Hop utilization, web article, 1997.
Share tinseth_utilization(Duration boil, SpecificGravity gravity);

}  // namespace entrywise
