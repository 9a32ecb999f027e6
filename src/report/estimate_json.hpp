#pragma once

#include "brewing/beer.hpp"
#include "recipe/recipe.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// What a recipe makes, as an `entrywise/estimate/1` document: the numbers, the share of each ingredient in
/// gravity, bitterness and color, bitterness by other formulas, and what was assumed.
Json estimate_json(const Recipe& recipe, const Beer& beer);

}  // namespace entrywise
