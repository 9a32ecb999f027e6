#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// How many ingredients are named as causes, and the least share of what is sensed that makes one worth it
/// (working values).
inline constexpr std::size_t most_causes = 3;
inline constexpr double least_share_of_a_cause = 0.1;

/// What in the recipe a finding comes from: ingredients with their share of what is sensed, largest first,
/// and the numbers and settings behind it. At most four lines.
std::vector<std::string> causes_of(const Finding& finding, const Recipe& recipe, const Beer& beer);

/// The lines on numbers and settings behind an attribute, named by its word, besides its ingredients.
std::vector<std::string> settings_behind(const std::string& attribute, const Recipe& recipe,
                                         const Beer& beer);

/// The ingredients that give an attribute, or none where it does not come from ingredients.
std::vector<SourceShare> sources_of(const Finding& finding, const Beer& beer);

}  // namespace entrywise
