#pragma once

#include <string>
#include <vector>

#include "interchange/remark.hpp"
#include "recipe/recipe.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// `entrywise/convert/1`: the recipe, what it was converted to, the text of that file, and what there is to
/// know of it: {"file", "line", "column", "kind", "text"} each.
Json conversion_json(const Recipe& recipe, const std::string& to, const std::string& text,
                     const std::vector<Remark>& remarks);

}  // namespace entrywise
