#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.hpp"
#include "interchange/remark.hpp"
#include "interchange/style_match.hpp"
#include "reading/known_ingredients.hpp"
#include "reading/node.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The size up to which files of other formats are read: a brewer's whole collection; a working value.
inline constexpr std::size_t most_exchange_bytes = 8388608;

/// What a recipe may be written in other than a recipe file.
enum class Exchange { beerjson, beerxml, table };

/// By what a text says, or else by the ending of its name (`.json`, `.xml`, `.csv`, `.tsv`); nothing for a
/// recipe file, which says so itself.
std::optional<Exchange> exchange_of(const std::string& path, std::string_view text);

/// A recipe from a file of another format.
struct ExchangedRecipe {
    Recipe recipe;
    Node document;  ///< as the recipe file that says the same
    std::vector<Remark> remarks;
};

/// The recipe in such a text. Of several, `pick` chooses one by its name or its number, counted from one; a
/// fault lists them where it does not. A style that the file names by words is looked for among `styles`.
/// Never throws for what is in the text.
Outcome<ExchangedRecipe> read_exchange(Exchange exchange, std::string_view text, const std::string& file,
                                       const std::string& pick, const KnownIngredients& known,
                                       const StyleTitles& styles = {});

/// The same of a BeerJSON document that was read already.
Outcome<ExchangedRecipe> read_beerjson(const Node& document, const std::string& file, const std::string& pick,
                                       const KnownIngredients& known, const StyleTitles& styles = {});

}  // namespace entrywise
