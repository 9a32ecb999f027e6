#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// One thing that a brewer can turn in a recipe: how the recipe looks at a setting, and how the change is
/// told. The setting runs between two ends; what is sensed moves one way from where the recipe stands to
/// either end.
struct Lever {
    double now = 0.0;  ///< where the recipe stands
    double lowest = 0.0;
    double highest = 1.0;
    double step = 0.01;  ///< settings nearer to one another are told as one
    std::function<Recipe(double setting)> at;
    std::function<std::string(double setting)> told;
    bool is_last_resort = false;  ///< to be turned only where those before it do not reach
};

/// The levers that move what a finding is about, those that disturb the recipe least first.
std::vector<Lever> levers_for(const Finding& finding, const Recipe& recipe, const Beer& beer,
                              const Style& style);

}  // namespace entrywise
