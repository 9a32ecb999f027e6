#pragma once

#include <string>

#include "base/fault.hpp"
#include "knowledge/recipe_in_text.hpp"
#include "reading/library.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The recipe that a word of the call names: a recipe file, or a file of another format, by what it says or
/// its ending. `pick` chooses one of several by name or number. Where someone has to type it, that is said.
Outcome<RecipeInput> recipe_input(const std::string& word, const Library& library, const std::string& pick);

/// The recipe alone; what there is to know of another format is told.
Outcome<Recipe> recipe_named(const std::string& word, const Library& library, const std::string& pick = {});

}  // namespace entrywise
