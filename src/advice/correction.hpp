#pragma once

#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "style/perception.hpp"
#include "style/phrase.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The least changes that bring what a finding is about back to what the style accepts, each on its own, each
/// worked out through the whole model: grams, degrees, volumes. None takes the numbers of the style further
/// out, all together (`numbers_are_kept`). Where none reaches it, general advice in words. At most two.
std::vector<std::string> corrections_of(const Finding& finding, const Recipe& recipe, const Beer& beer,
                                        const Style& style, const Perception& perception,
                                        const PhraseBook& phrases);

}  // namespace entrywise
