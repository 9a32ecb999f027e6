#pragma once

#include "reading/fields.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The items of a recipe's `grist`, `hops` and `yeast`, each with its ingredient looked up in the tables and
/// with what the recipe states in place of table values.
GristAddition read_grist_addition(const Node& node, const IngredientTables& tables, FaultLog& faults);
HopAddition read_hop_addition(const Node& node, const IngredientTables& tables, FaultLog& faults);
YeastAddition read_yeast_addition(const Node& node, const IngredientTables& tables, FaultLog& faults);

}  // namespace entrywise
