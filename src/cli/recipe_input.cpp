#include "cli/recipe_input.hpp"

#include <utility>

#include "base/file.hpp"
#include "cli/streams.hpp"
#include "interchange/exchange.hpp"
#include "reading/document_file.hpp"
#include "report/conversion_text.hpp"

namespace entrywise {

Outcome<RecipeInput> recipe_input(const std::string& word, const Library& library, const std::string& pick) {
    if (word == "-" && input_is_typed()) {
        tell("Reading a recipe from standard input; Ctrl-D on a line of its own ends it.\n");
    }
    const Outcome<std::string> text = read_file(word, most_exchange_bytes);
    return text ? recipe_in_text(*text, shown_path(word), library, pick) : Outcome<RecipeInput>(text.faults);
}

Outcome<Recipe> recipe_named(const std::string& word, const Library& library, const std::string& pick) {
    Outcome<RecipeInput> input = recipe_input(word, library, pick);
    if (!input) {
        return input.faults;
    }
    tell(conversion_text(input->remarks));
    return std::move(input.value->recipe);
}

}  // namespace entrywise
