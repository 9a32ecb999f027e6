#pragma once

#include "interchange/beerjson_amount.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// An addition of malt, sugar or extract as BeerJSON says it.
BeerJson beerjson_fermentable(const GristAddition& addition);

}  // namespace entrywise
