#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/known_ingredients.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The recipe in a file, or in standard input for `-`.
Outcome<Recipe> read_recipe(const std::string& path, const KnownIngredients& known);

}  // namespace entrywise
