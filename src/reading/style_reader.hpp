#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/node.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The style of a style file, `entrywise/style/1`, under the name that its folder and file give it: a code
/// inside that differs from the file's name is a fault.
Outcome<Style> read_style(const Node& document, const StyleName& name, const std::string& file);

}  // namespace entrywise
