#include "brewing/brew.hpp"

#include "brewing/bittering.hpp"
#include "brewing/coloring.hpp"
#include "brewing/conditioning.hpp"
#include "brewing/fermentation.hpp"
#include "brewing/grain_character.hpp"
#include "brewing/hop_character.hpp"
#include "brewing/measured.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"
#include "brewing/yeast_character.hpp"

namespace entrywise {

namespace {

Estimate<Carbonation> carbonation_of(const Process& process, const Measured& measured, Deviates& deviates) {
    if (measured.carbonation) {
        return draw_measured("carbonation", *measured.carbonation, deviates);
    }
    return deviates.draw("carbonation", process.carbonation, 0.0 * volume_of_co2, 8.0 * volume_of_co2);
}

Drivers drivers_of(const Process& process, const Wort& wort, Deviates& deviates) {
    Drivers drivers;
    grain_character(process, wort, deviates.draws(), drivers);
    hop_character(process, wort, deviates, drivers);
    conditioning(process, wort, deviates, drivers);
    const YeastCharacter yeast = yeast_character(process, wort, drivers.acid.total, deviates);
    drivers.ester = yeast.ester;
    drivers.phenol = yeast.phenol;
    drivers.diacetyl = yeast.diacetyl;
    drivers.sulfur = yeast.sulfur;
    drivers.sour = yeast.sour;
    drivers.funk = yeast.funk;
    drivers.fusel = yeast.fusel;
    return drivers;
}

}  // namespace

Beer brew(const Recipe& recipe, Deviates& deviates) {
    const Process process = process_of(recipe);
    const Wort wort = make_wort(process, recipe.measured, deviates);
    const Fermented fermented = ferment(process, wort, recipe.measured, deviates);
    Beer beer;
    beer.original_gravity = wort.original_gravity;
    beer.final_gravity = fermented.final_gravity;
    beer.original_extract = fermented.original_extract;
    beer.apparent_extract = fermented.apparent_extract;
    beer.real_extract = fermented.real_extract;
    beer.apparent_attenuation = fermented.apparent_attenuation;
    beer.alcohol = fermented.alcohol;
    BitterBeer bitter = bittering(process, wort, recipe.measured, deviates);
    beer.bitterness = std::move(bitter.read);
    beer.tasted_bitterness = std::move(bitter.tasted);
    beer.other_bitterness = other_bitterness(process, wort);
    beer.color = coloring(process, wort, recipe.measured, deviates);
    beer.carbonation = carbonation_of(process, recipe.measured, deviates);
    beer.carbonation_is_assumed = !recipe.conditioning.carbonation && !recipe.measured.carbonation;
    beer.drivers = drivers_of(process, wort, deviates);
    beer.assumptions = process.assumptions;
    return beer;
}

}  // namespace entrywise
