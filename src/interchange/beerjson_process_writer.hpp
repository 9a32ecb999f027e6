#pragma once

#include "interchange/beerjson_amount.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

// How a recipe is mashed, fermented and conditioned, as BeerJSON says it.
BeerJson beerjson_mash(const Recipe& recipe);
BeerJson beerjson_fermentation(const Recipe& recipe);

}  // namespace entrywise
