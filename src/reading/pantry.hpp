#pragma once

#include "reading/known_ingredients.hpp"
#include "recipe/ingredients.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The ingredients that are customary for a style, the most usual first: malts and sugars, hops and yeast
/// classes. Where the style names a whole family, such as crystal malt or English hops, the one or few that
/// brewers take first stand for it (common practice). What the style calls unusual is left out.
IngredientTables pantry_of(const Style& style, const KnownIngredients& known);

}  // namespace entrywise
