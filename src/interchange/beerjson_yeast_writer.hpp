#pragma once

#include "interchange/beerjson_amount.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// An addition of yeast or bacteria as BeerJSON says it.
BeerJson beerjson_culture(const YeastAddition& addition);

}  // namespace entrywise
