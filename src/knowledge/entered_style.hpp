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

/// The base style that the recipe declares, if it does, or the variant of it.
Outcome<std::optional<Style>> declared_base_style(const Recipe& recipe, const Knowledge& knowledge);

/// Faults of the styles that a recipe file names and that are not known, for one that cannot be read.
std::vector<Fault> unknown_styles_in(const Node& recipe, const std::string& file, const Library& library);

/// What the recipe is judged by if it is entered in this style.
Outcome<EnteredStyle> entered_style(Style style, const Recipe& recipe, const Knowledge& knowledge);

}  // namespace entrywise
