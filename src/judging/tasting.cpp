#include "judging/tasting.hpp"

#include <utility>

#include "brewing/brew.hpp"
#include "sensing/sense.hpp"

namespace entrywise {

Tasting taste(Recipe recipe, const Perception& perception, std::size_t draws) {
    Deviates deviates(draws);
    return taste(std::move(recipe), perception, deviates);
}

Tasting taste(Recipe recipe, const Perception& perception, Deviates& deviates) {
    deviates.forget_inputs();
    Tasting tasting;
    tasting.recipe = std::move(recipe);
    tasting.beer = brew(tasting.recipe, deviates);
    tasting.profile = sense(tasting.beer, perception, deviates);
    return tasting;
}

}  // namespace entrywise
