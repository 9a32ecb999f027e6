#pragma once

#include <optional>

#include "base/fault.hpp"
#include "knowledge/knowledge.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What an entry is judged by: its style, or the variant of it that the recipe declares, and the base style
/// where one is declared.
struct EnteredStyle {
    Style style;
    std::optional<Style> base_style;
};

/// The style that the recipe declares. None at all is a fault, and so is one that is not known.
Outcome<Style> declared_style(const Recipe& recipe, const Library& library);

/// What the recipe is judged by if it is entered in this style.
Outcome<EnteredStyle> entered_style(Style style, const Recipe& recipe, const Knowledge& knowledge);

}  // namespace entrywise
