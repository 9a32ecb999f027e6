#include "cli/recipe_input.hpp"

#include "cli/streams.hpp"
#include "reading/recipe_file.hpp"

namespace entrywise {

Outcome<Recipe> recipe_named(const std::string& word, const KnownIngredients& known) {
    if (word == "-" && input_is_typed()) {
        tell("Reading a recipe from standard input; Ctrl-D on a line of its own ends it.\n");
    }
    return read_recipe(word, known);
}

}  // namespace entrywise
