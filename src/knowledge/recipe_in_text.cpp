#include "knowledge/recipe_in_text.hpp"

#include <fmt/format.h>

#include <utility>

#include "base/text.hpp"
#include "interchange/exchange.hpp"
#include "knowledge/entered_style.hpp"
#include "knowledge/knowledge.hpp"
#include "reading/fault_log.hpp"
#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"

namespace entrywise {

namespace {

Fault too_large(const std::string& file) {
    return {.place = {file, {}},
            .found = fmt::format("more than {} bytes", most_document_bytes),
            .expected = "a recipe file",
            .nearest = {},
            .remedy = "Give a smaller file: one recipe takes a few kilobytes."};
}

/// All that is wrong with a recipe file: what kept it from being read, and styles that nobody knows.
std::vector<Fault> all_faults(std::vector<Fault> faults, const Node& document, const std::string& file,
                              const Library& library) {
    const std::vector<Fault> unknown = unknown_styles_in(document, file, library);
    faults.insert(faults.end(), unknown.begin(), unknown.end());
    return in_order(std::move(faults));
}

Outcome<RecipeInput> from_recipe_file(const std::string& text, const std::string& file,
                                      const Library& library, const std::string& pick) {
    if (text.size() > most_document_bytes) {
        return too_large(file);
    }
    Outcome<Node> document = yaml_document(text, file);
    if (!document) {
        return document.faults;
    }
    Outcome<Recipe> recipe = read_recipe(*document, library.ingredients(), file);
    if (!recipe) {
        return all_faults(std::move(recipe.faults), *document, file, library);
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

Outcome<RecipeInput> recipe_in_text(const std::string& text, const std::string& file, const Library& library,
                                    const std::string& pick) {
    const auto exchange = exchange_of(file, text);
    if (!exchange) {
        return from_recipe_file(text, file, library, pick);
    }
    Outcome<ExchangedRecipe> read =
        read_exchange(*exchange, text, file, pick, library.ingredients(), titles_in(library));
    if (!read) {
        return read.faults;
    }
    ExchangedRecipe& exchanged = *read.value;
    return RecipeInput{std::move(exchanged.recipe), std::move(exchanged.document), false,
                       std::move(exchanged.remarks)};
}

}  // namespace entrywise
