#pragma once

#include "reading/fields.hpp"
#include "reading/known_ingredients.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The items of a recipe's `grist`, `hops` and `yeast`, each with its ingredient looked up in the tables and
/// with what the recipe states in place of table values.
GristAddition read_grist_addition(const Node& node, const KnownIngredients& known, FaultLog& faults);
HopAddition read_hop_addition(const Node& node, const KnownIngredients& known, FaultLog& faults);
YeastAddition read_yeast_addition(const Node& node, const KnownIngredients& known, FaultLog& faults);

}  // namespace entrywise
