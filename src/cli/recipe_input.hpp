#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/known_ingredients.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The recipe that a word of the call names. Where someone has to type it, that is said.
Outcome<Recipe> recipe_named(const std::string& word, const KnownIngredients& known);

}  // namespace entrywise
