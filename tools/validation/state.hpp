#pragma once

#include <string>
#include <vector>

#include "knowledge/knowledge.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The recipes of a folder, in the order of their files' names. One that cannot be read ends the program.
std::vector<Recipe> recipes_in(const std::string& folder, const Library& library);

/// Eight digits that change when what the program makes of these recipes changes: numbers, levels, what is
/// found against the declared style, or the style that leads. By them a figure tells whether it belongs to
/// the program as it is.
std::string state_of(const Knowledge& knowledge, const std::vector<Style>& styles,
                     const std::vector<Recipe>& recipes);

}  // namespace entrywise
