#pragma once

#include <optional>
#include <vector>

#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "style/declaration.hpp"
#include "style/score_sheet.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What the style asks the entry form to say and the recipe leaves out, in the order of the style. The code
/// of a variant, such as `25B-table-pale`, says what it is a variant by.
std::vector<Declaration> missing_declarations(const Recipe& recipe, const Style& style,
                                              const std::vector<Declaration>& known);

/// What the recipe says of that which the style asks the entry form to say, each by its first word in lower
/// case, as the codes of variants do: `standard`, `pale`.
std::vector<std::string> declared_words(const Recipe& recipe, const Style& style,
                                        const std::vector<Declaration>& known);

/// The finding that so many declarations are missing: each further one costs half of the one before. Nothing
/// where none is.
std::optional<Finding> declaration_finding(std::size_t missing, const ScoreSheet& score_sheet);

}  // namespace entrywise
