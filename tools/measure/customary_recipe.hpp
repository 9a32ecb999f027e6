#pragma once

#include <optional>

#include "reading/known_ingredients.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A recipe that a brewer of the style would write: its usual malts, hops and yeast in usual shares (working
/// values), with the amounts, the mash and the color turned until the numbers are those in the middle of the
/// style. Nothing where the style prints no closed range of one of the five numbers, or names no malt, hop or
/// yeast that is known.
std::optional<Recipe> customary_recipe(const Style& style, const KnownIngredients& ingredients);

}  // namespace entrywise
