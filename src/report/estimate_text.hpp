#pragma once

#include <string>

#include "brewing/beer.hpp"
#include "recipe/recipe.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// What a recipe makes, for reading: every number with its interval and how it was worked out, the share of
/// each ingredient in gravity, bitterness and color, bitterness by other formulas, and what was assumed. No
/// line is longer than the page is wide.
std::string estimate_text(const Recipe& recipe, const Beer& beer, const TextStyle& style);

}  // namespace entrywise
