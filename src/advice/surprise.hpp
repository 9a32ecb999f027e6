#pragma once

#include <string>
#include <vector>

#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "style/perception.hpp"

namespace entrywise {

/// A number that was measured and that the recipe would hardly have made: outside what eight in ten of its
/// brews come to, so that something went otherwise than written.
struct Surprise {
    std::vector<std::string> shown_by;  ///< attributes that the number stands behind
    Direction direction = Direction::above;
    std::string told;  ///< `final gravity was measured as 1.020, where this recipe makes 1.008 to 1.015`
};

std::vector<Surprise> surprises_in(const Recipe& recipe, const Perception& perception);

/// What is told of the one that stands behind too much or too little of an attribute; empty where none does.
std::string surprise_behind(const std::string& attribute, Direction direction,
                            const std::vector<Surprise>& surprises);

}  // namespace entrywise
