#include "cli/recipe_input.hpp"

#include <fmt/format.h>

#include <utility>

#include "base/file.hpp"
#include "base/text.hpp"
#include "cli/knowledge.hpp"
#include "cli/streams.hpp"
#include "interchange/exchange.hpp"
#include "reading/document_file.hpp"
#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"
#include "report/conversion_text.hpp"

namespace entrywise {

namespace {

Fault too_large(const std::string& file) {
    return {.place = {file, {}},
            .found = fmt::format("more than {} bytes", most_document_bytes),
            .expected = "a recipe file",
            .nearest = {},
            .remedy = "Give a smaller file: one recipe takes a few kilobytes."};
}

Outcome<RecipeInput> from_recipe_file(const std::string& text, const std::string& file,
                                      const KnownIngredients& known, const std::string& pick) {
    if (text.size() > most_document_bytes) {
        return too_large(file);
    }
    Outcome<Node> document = yaml_document(text, file);
    if (!document) {
        return document.faults;
    }
    Outcome<Recipe> recipe = read_recipe(*document, known, file);
    if (!recipe) {
        return recipe.faults;
    }
    const bool is_picked = pick.empty() || pick == "1" || lowered(pick) == lowered(recipe->name);
    if (!is_picked) {
        return Fault{.place = {file, {}},
                     .found = fmt::format("--pick {}", pick),
                     .expected = fmt::format("the only recipe there, '{}'", recipe->name),
                     .nearest = {},
                     .remedy = {}};
    }
    return RecipeInput{*std::move(recipe.value), *std::move(document.value), true, {}};
}

/// Read only when they are asked for; a style that is not sound is told where it is wanted.
StyleTitles titles_in(const Library& library) {
    return [&library] {
        std::vector<StyleTitle> titles;
        for (const std::string& guide : guides_in("all", library)) {
            for (const StyleName& name : library.style_names(guide)) {
                if (const Outcome<Style> style = library.style(name)) {
                    titles.push_back({name, style->name});
                }
            }
        }
        return titles;
    };
}

}  // namespace

Outcome<RecipeInput> recipe_input(const std::string& word, const Library& library, const std::string& pick) {
    if (word == "-" && input_is_typed()) {
        tell("Reading a recipe from standard input; Ctrl-D on a line of its own ends it.\n");
    }
    const Outcome<std::string> text = read_file(word, most_exchange_bytes);
    if (!text) {
        return text.faults;
    }
    const std::string file = shown_path(word);
    const auto exchange = exchange_of(word, *text);
    if (!exchange) {
        return from_recipe_file(*text, file, library.ingredients(), pick);
    }
    Outcome<ExchangedRecipe> read =
        read_exchange(*exchange, *text, file, pick, library.ingredients(), titles_in(library));
    if (!read) {
        return read.faults;
    }
    ExchangedRecipe& exchanged = *read.value;
    return RecipeInput{std::move(exchanged.recipe), std::move(exchanged.document), false,
                       std::move(exchanged.remarks)};
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
