#pragma once

#include <optional>

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "cli/knowledge.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What an entry is judged by: its style, or the variant of it that the recipe declares, and the base style
/// where one is declared.
struct EnteredStyle {
    Style style;
    std::optional<Style> base_style;
};

/// The style that the call names, or else the one that the recipe declares. None at all is a fault.
Outcome<EnteredStyle> style_entered(const Recipe& recipe, const Call& call, const Knowledge& knowledge);

}  // namespace entrywise
