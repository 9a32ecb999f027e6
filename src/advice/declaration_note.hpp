#pragma once

#include <string>
#include <vector>

#include "style/declaration.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What the entry form must still say: `The entry form must say the strength: table, standard or super.`
std::string note_on_missing(const std::vector<Declaration>& missing, const Style& style);

/// What to write into the recipe, so that it is said: ``write `declares: {strength: ...}` into the recipe``.
std::string correction_of_missing(const std::vector<Declaration>& missing, const Style& style);

}  // namespace entrywise
