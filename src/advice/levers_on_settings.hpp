#pragma once

#include <vector>

#include "advice/lever.hpp"

namespace entrywise {

// Each is one lever, or none where the recipe or the style leaves nothing to turn.

/// The mash warmer or colder, within what enzymes bear. A mash that converts in several rests has no one
/// temperature to turn.
std::vector<Lever> lever_on_mash(const Recipe& recipe);

/// Carbonation within what is customary for the style, and never near what a common beer bottle bears at most
/// (4 volumes, common practice).
std::vector<Lever> lever_on_carbonation(const Recipe& recipe, const Beer& beer, const Style& style);

/// Fermentation within what the yeast is at home in.
std::vector<Lever> lever_on_fermentation(const Recipe& recipe);

/// All fermentables by the same factor: a weaker or stronger beer of the same kind.
std::vector<Lever> lever_on_strength(const Recipe& recipe);

}  // namespace entrywise
