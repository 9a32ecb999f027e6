#pragma once

#include "sensing/middle_of_style.hpp"
#include "tests/support/judging.hpp"
#include "tests/support/palate.hpp"

namespace entrywise::testing {

/// The beer whose numbers are in the middle of a style.
inline Beer beer_of(const MiddleOfStyle& middle) {
    Beer beer = plain_beer();
    beer.original_gravity.total = always(middle.original_gravity);
    beer.original_extract = always(middle.original_extract);
    beer.real_extract = always(middle.real_extract);
    beer.apparent_attenuation = always(middle.attenuation);
    beer.final_gravity = always(middle.final_gravity);
    beer.alcohol = always(middle.alcohol);
    beer.bitterness.total = always(middle.bitterness);
    beer.tasted_bitterness = always(middle.bitterness);
    beer.color.total = always(middle.color);
    beer.carbonation = always(middle.carbonation);
    return beer;
}

/// What numbers decide is at the level that they give; the rest is in the middle of what the style accepts.
/// What the style does not describe is left out of the judging.
inline Profile profile_of(const Style& style, const MiddleOfStyle& middle) {
    Profile profile = plain_profile();
    for (const Attribute attribute : all_attributes()) {
        const auto by_numbers = levels_at_middle(middle, usual_palate())[attribute];
        const auto& expectation = style.expected[attribute];
        if (by_numbers) {
            profile.level[attribute] = always(*by_numbers);
        } else if (expectation) {
            profile.level[attribute] = always(0.5 * (expectation->low + expectation->high));
        } else {
            profile.untold.push_back(attribute);
        }
    }
    return profile;
}

}  // namespace entrywise::testing
