#pragma once

#include <vector>

#include "recipe/ingredients.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// What can still be changed: everything before the beer is brewed, or only what a finished beer allows.
enum class Stage { recipe, brewed };

/// What may be used that the recipe does not have: ingredients that are customary for the style, and other
/// beers to blend with.
struct MendingMeans {
    IngredientTables pantry;
    std::vector<Recipe> other_beers;
};

}  // namespace entrywise
