#pragma once

#include <string>
#include <vector>

#include "recipe/recipe.hpp"

namespace entrywise {

/// Takes out of a changed recipe what was measured on the beer as it was and what the changes move by more
/// than its instrument tells, and returns the names of what was taken out.
std::vector<std::string> drop_untrue_measurements(const Recipe& before, Recipe& changed);

/// The finished beer's measured bitterness, moved by what the model says that a dry hop does to it.
void move_measured_bitterness(const Recipe& before, Recipe& changed);

}  // namespace entrywise
