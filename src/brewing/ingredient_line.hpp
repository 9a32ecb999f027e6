#pragma once

#include <string>

#include "recipe/recipe.hpp"

namespace entrywise {

/// A hop addition as one names it among the others: `Cascade at 60 min`, `Citra as dry hop`.
std::string line_of(const HopAddition& addition);

}  // namespace entrywise
