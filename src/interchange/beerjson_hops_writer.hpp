#pragma once

#include "interchange/beerjson_amount.hpp"
#include "interchange/beerjson_kettle.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// A hop addition as BeerJSON says it.
BeerJson beerjson_hop(const HopAddition& addition, KettleSteps& steps);

}  // namespace entrywise
