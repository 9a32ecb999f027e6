#pragma once

#include "interchange/beerjson_amount.hpp"
#include "interchange/beerjson_kettle.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// An addition of spice, fruit, wood, finings or the like as BeerJSON says it.
BeerJson beerjson_extra(const ExtraAddition& extra, KettleSteps& steps);

}  // namespace entrywise
