#pragma once

#include <vector>

#include "base/fault.hpp"
#include "reading/library.hpp"
#include "recipe/recipe.hpp"
#include "style/declaration.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The variant of a style that varies which fits what the recipe declares: `25B-standard-pale` for a saison
/// of standard strength that is pale. Its `variant_of` names the style. Of several that fit, the one that
/// more of what is declared is said of, then the one that leaves nothing open. The style itself where none
/// fits or it does not vary.
Outcome<Style> declared_variant(Style style, const Recipe& recipe, const Library& library,
                                const std::vector<Declaration>& known);

}  // namespace entrywise
