#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/known_ingredients.hpp"
#include "reading/node.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The recipe of a recipe file, `entrywise/recipe/1`, its ingredients looked up in the tables. What the
/// recipe states of an ingredient takes the table's place: a plain value keeps the table's half width in
/// proportion, one with a spread brings its own. An ingredient that the tables lack is taken as the recipe
/// describes it if that is enough for an estimate: extract and color of a malt or sugar, alpha acids of a
/// hop, attenuation of a yeast.
Outcome<Recipe> read_recipe(const Node& document, const KnownIngredients& known, const std::string& file);

}  // namespace entrywise
