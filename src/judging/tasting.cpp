#include "judging/tasting.hpp"

#include "brewing/brew.hpp"
#include "sensing/sense.hpp"

namespace entrywise {

Tasting taste(const Recipe& recipe, const Perception& perception, std::size_t draws) {
    Deviates deviates(draws);
    return taste(recipe, perception, deviates);
}

Tasting taste(const Recipe& recipe, const Perception& perception, Deviates& deviates) {
    deviates.forget_inputs();
    Tasting tasting;
    tasting.recipe = recipe;
    tasting.beer = brew(recipe, deviates);
    tasting.profile = sense(tasting.beer, perception, deviates);
    return tasting;
}

}  // namespace entrywise
