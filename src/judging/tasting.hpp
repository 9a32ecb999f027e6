#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "recipe/recipe.hpp"
#include "sensing/profile.hpp"

namespace entrywise {

/// A recipe worked out: the beer that it makes and what is sensed of it, over the same draws. It knows of no
/// style; one tasting can be held against many.
struct Tasting {
    Recipe recipe;
    Beer beer;
    Profile profile;
};

/// `draws` as `Deviates` takes them.
Tasting taste(Recipe recipe, const Perception& perception, std::size_t draws = usual_draws);

/// With dice that are kept, for who tastes one recipe after the other: the same as with new ones.
Tasting taste(Recipe recipe, const Perception& perception, Deviates& deviates);

}  // namespace entrywise
