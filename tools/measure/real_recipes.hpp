#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reading/library.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// How the numbers that a source states came about, where it says so.
enum class StatedAs { measured, planned, unknown };

/// One recipe of a folder of real recipes, as the folder's index tells of it.
struct RealRecipe {
    std::string id;
    bool winner = false;
    std::vector<std::string> styles;  ///< that it was accepted in
    std::optional<double> original_gravity;
    std::optional<double> final_gravity;
    std::optional<double> alcohol;  ///< percent by volume
    StatedAs stated_as = StatedAs::unknown;
    bool additions_left_out = false;  ///< the source names spices, salt or the like without an amount
};

/// What `index.json` of the folder lists; empty where there is none.
std::vector<RealRecipe> real_recipes_in(const std::string& folder);

/// The recipe as its file states it; nothing where it cannot be read, which is told.
std::optional<Recipe> recipe_of(const RealRecipe& entry, const std::string& folder, const Library& library);

/// The recipe with the stated gravities as measured ones.
Recipe with_stated_gravities(Recipe recipe, const RealRecipe& entry);

}  // namespace entrywise
