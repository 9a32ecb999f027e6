#pragma once

#include <string>
#include <string_view>

#include "base/fault.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// The text of a recipe file with its recipe mended: what differs between the recipe that was read from it
/// and the mended one is written in its place, everything else, comments and order among it, is left as it
/// is. Additions that the mended recipe lacks go with their lines, new ones stand behind those of their list.
/// What differs, of everything that can be changed to mend a recipe: volume, boil time, mash temperatures,
/// grist, hops and extras, yeast, fermentation, conditioning, and measured values that no longer hold. A
/// layout that cannot be edited in place is a fault. `file` is the name that faults carry.
Outcome<std::string> mended_text(std::string_view text, const Recipe& recipe, const Recipe& mended,
                                 const std::string& file);

}  // namespace entrywise
