#pragma once

#include "recipe/recipe.hpp"

namespace entrywise {

/// How much yeast is usually pitched: 0.75 million cells for each milliliter and degree Plato of an ale, 1.5
/// of a beer fermented cold. Common practice.
PitchRate usual_pitch(Fermentation fermentation);

/// How often the pitch doubles the usual one: -1 for half of it, 0 where the recipe does not say. Between -2
/// and 2.
double pitch_doublings(const YeastAddition& addition);

}  // namespace entrywise
