#pragma once

#include "recipe/recipe.hpp"

namespace entrywise {

/// The most of one hop addition that a brewer takes to the liter: 6 g in the boil, 10 g in the whirlpool, 12
/// g on the beer (common practice; beyond, little more is won and much beer is lost to the hops).
Concentration most_of_hops(HopUse use);

}  // namespace entrywise
