#pragma once

#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// How far a recipe departs from what is customary for a style: no ground for taking points, yet it tells
/// which of two near styles a beer was brewed as.
struct CustomFit {
    double yeast = 0.0;  ///< 0 a usual class, 0.4 a possible one, 1 a class that the style seldom sees
    double hops = 0.0;   ///< 0 families that are usual, up to 1 for those that are not
    double grist = 0.0;  ///< share of what is usual that is missing, and 1 for each thing that is unusual
    std::vector<std::string> departures;  ///< in words: `brewed with english ale yeast, which ...`
};

CustomFit custom_fit(const Recipe& recipe, const Beer& beer, const Style& style);

}  // namespace entrywise
