#pragma once

#include "recipe/recipe.hpp"

namespace entrywise {

/// The whole grist by mass.
Mass all_of_grist(const Recipe& recipe);

/// The most that a brewer takes of a malt, grain or sugar, as a part of the grist by mass: a tenth of roasted
/// malt or lactose, a fifth of crystal malt or sugar, a quarter of toasted malt, two fifths of unmalted
/// grain (common practice).
double most_of_grist(const Fermentable& fermentable);

}  // namespace entrywise
