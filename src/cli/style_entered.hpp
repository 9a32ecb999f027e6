#pragma once

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "cli/knowledge.hpp"
#include "knowledge/entered_style.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The style that the call names, or else the one that the recipe declares. None at all is a fault.
Outcome<EnteredStyle> style_entered(const Recipe& recipe, const Call& call, const Knowledge& knowledge);

}  // namespace entrywise
