#pragma once

#include <optional>
#include <string>
#include <vector>

#include "advice/mend.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// For each proposal the document of the recipe as it would have it, made from the text that the mended
/// recipe was read from; nothing where a recipe file has no words for it, as for a blend.
std::vector<std::optional<Node>> mended_recipes(const Mending& mending, const std::string& text);

}  // namespace entrywise
