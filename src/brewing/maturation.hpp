#pragma once

#include <optional>

#include "recipe/recipe.hpp"

namespace entrywise {

/// What a beer goes through between pitching and drinking, as far as the recipe tells.
struct Maturation {
    Fermentation fermentation = Fermentation::top;
    std::optional<Duration> on_yeast;
    std::optional<DiacetylRest> rest;
    std::optional<Duration> conditioned;
    double cold_weeks = 0.0;
    double pitch_doublings = 0.0;
};

/// Steps by which the handling of a beer moves its diacetyl away from what its yeast leaves when handled
/// well. A warm rest and lagering lower it; beer taken off the yeast early without a rest, and too little
/// yeast, raise it. Zero where the recipe tells nothing. Source of the directions and of the rest of 1 to 3
/// days at 14 to 18 °C: Krogerus and Gibson, 125th Anniversary Review: Diacetyl and its control during
/// brewery fermentation, Journal of the Institute of Brewing 119, 2013; the steps are working values.
double diacetyl_change(const Maturation& maturation);

/// What the handling leaves of the sulfur that the yeast gives in a usual time of conditioning (4 weeks for a
/// lager, 2 for an ale): it fades in weeks, and too little yeast makes more of it. One where the recipe tells
/// nothing. Direction: common practice of lager brewers; the rate is a working value.
double sulfur_factor(const Maturation& maturation);

}  // namespace entrywise
