#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"
#include "interchange/remark.hpp"
#include "reading/library.hpp"
#include "reading/node.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// A recipe as it came in.
struct RecipeInput {
    Recipe recipe;
    Node document;                ///< as the recipe file that says the same
    bool is_recipe_file = true;   ///< false for a file of another format
    std::vector<Remark> remarks;  ///< on what another format made necessary
};

/// The recipe in the text of a file: a recipe file, or a file of another format, by what it says or the
/// ending of its name. `pick` chooses one of several by name or number.
Outcome<RecipeInput> recipe_in_text(const std::string& text, const std::string& file, const Library& library,
                                    const std::string& pick = {});

}  // namespace entrywise
