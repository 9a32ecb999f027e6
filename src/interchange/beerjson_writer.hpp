#pragma once

#include <optional>
#include <string>
#include <vector>

#include "interchange/remark.hpp"
#include "reading/known_ingredients.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// What a style is called beside its code.
struct StyleInWords {
    std::string name;
    std::string category;
};

struct WrittenExchange {
    std::string text;
    std::vector<Remark> remarks;
};

/// The recipe as a BeerJSON 1.0 document. What the standard has no place for stands in the recipe's notes, as
/// lines of a recipe file, and reading it back gives a recipe that says the same to the last digit. What the
/// standard asks for and the recipe does not say is filled with the least that the standard takes, and told.
WrittenExchange beerjson_text(const Recipe& recipe, const std::optional<StyleInWords>& style,
                              const KnownIngredients& known);

}  // namespace entrywise
