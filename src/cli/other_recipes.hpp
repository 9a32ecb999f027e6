#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"
#include "reading/library.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The recipes of a folder, in the order of their files, without the one that is given. A folder that cannot
/// be read, one without any other recipe and every fault of a recipe is told.
Outcome<std::vector<Recipe>> other_recipes(const std::string& folder, const std::string& recipe_file,
                                           const Library& library);

}  // namespace entrywise
