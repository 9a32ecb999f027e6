#pragma once

#include <optional>
#include <string_view>

#include "recipe/recipe.hpp"

namespace entrywise {

/// The guide of a style that is named by its code alone.
inline constexpr std::string_view default_guide = "bjcp-2021";

/// The style that a text names: `guide/code`, or a code of the default guide. Whether there is such a style
/// the library knows.
std::optional<StyleName> style_name_from(std::string_view text);

}  // namespace entrywise
