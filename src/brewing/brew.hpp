#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// Works out the beer that a recipe makes, as estimates over the draws of `deviates`. What the recipe leaves
/// open takes the common default with a wide spread and is listed among the beer's assumptions; what was
/// measured replaces what would be estimated, and what depends on it follows. The order of ingredients does
/// not matter.
Beer brew(const Recipe& recipe, Deviates& deviates);

}  // namespace entrywise
