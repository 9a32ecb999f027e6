#pragma once

#include <span>

#include "quantity/quantities.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// How the mash moves the apparent attenuation limit, and how well that is known.
struct MashEffect {
    Attenuation shift;  ///< to add to the limit that the grist has after one hour at 65 °C
    Attenuation standard_deviation;
};

/// The effect of the rests of a mash, in their order, on the fermentability of the wort. Rests below 55 °C
/// turn no starch and are left out; once a rest has used up the beta-amylase, hotter ones (mash-out) hardly
/// count. A rest of 20 min or more at 60..64 °C and a second at 68..74 °C give more than any single rest;
/// less than an hour in all leaves points unfermented. Thickness is ignored. No rest that converts: no shift,
/// with the wide deviation. Valid for 55..80 °C, with a deviation of 4 points to 70 °C and 8 above. Source:
/// working curve between Chandrasekhar's mash data (82 % at 65 °C, 50 % at 75 °C, year not known) and
/// Terrill, ale strain trial, 2017, who found little fall to 70 °C; enzyme life: Muller, Mash
/// temperature and thickness, Journal of the Institute of Brewing 97, 1991.
MashEffect mash_effect(std::span<const MashRest> rests);

}  // namespace entrywise
