#pragma once

#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"
#include "reading/known_ingredients.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// The draft as the document of a recipe file, `entrywise/recipe/1`: names matched to the tables, with each
/// match told, and what is left out told too. What is wrong with it the recipe's reader tells, at the places
/// of the other file.
Node document_of(const Draft& draft, const KnownIngredients& known, ExchangeLog& log);

}  // namespace entrywise
