#pragma once

#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// What in the recipe a finding comes from: ingredients with their share of what is sensed, largest first,
/// and the numbers and settings behind it. At most four lines.
std::vector<std::string> causes_of(const Finding& finding, const Recipe& recipe, const Beer& beer);

/// The lines on numbers and settings behind an attribute, named by its word, besides its ingredients.
std::vector<std::string> settings_behind(const std::string& attribute, const Recipe& recipe,
                                         const Beer& beer);

/// The ingredients that give an attribute, or none where it does not come from ingredients.
std::vector<SourceShare> sources_of(const Finding& finding, const Beer& beer);

}  // namespace entrywise
