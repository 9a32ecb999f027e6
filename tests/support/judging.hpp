#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "sensing/profile.hpp"
#include "style/score_sheet.hpp"
#include "style/style.hpp"
#include "tests/support/palate.hpp"

namespace entrywise::testing {

// A beer, what is sensed of it and a style, each made by hand and in the middle of everything; tests move one
// thing.

template <class Quantity>
Estimate<Quantity> always(Quantity value, std::size_t draws = 8) {
    return Estimate<Quantity>(std::vector<Quantity>(draws, value));
}

inline Beer plain_beer() {
    Beer beer;
    beer.original_gravity.total = always(1.050 * specific_gravity);
    beer.final_gravity = always(1.011 * specific_gravity);
    beer.alcohol = always(5.1 * percent_by_volume);
    beer.bitterness.total = always(35.0 * ibu);
    beer.tasted_bitterness = always(35.0 * ibu);
    beer.color.total = always(8.0 * srm);
    beer.carbonation = always(2.5 * volume_of_co2);
    return beer;
}

inline Profile plain_profile() {
    Profile profile;
    profile.perception = usual_palate();
    for (const Attribute attribute : all_attributes()) {
        profile.level[attribute] = always(3.0);
    }
    return profile;
}

/// A range of each number about the plain beer, and nothing else.
inline Style style_about_plain_beer() {
    Style style;
    style.ranges.original_gravity =
        Range<SpecificGravity>{1.045 * specific_gravity, 1.055 * specific_gravity};
    style.ranges.final_gravity = Range<SpecificGravity>{1.008 * specific_gravity, 1.014 * specific_gravity};
    style.ranges.alcohol = Range<AlcoholByVolume>{4.6 * percent_by_volume, 5.8 * percent_by_volume};
    style.ranges.bitterness = Range<Bitterness>{20.0 * ibu, 40.0 * ibu};
    style.ranges.color = Range<Color>{5.0 * srm, 9.0 * srm};
    return style;
}

inline Style style_that_expects(Attribute attribute, double low, double high, bool assumed = false) {
    Style style;
    style.name = "Harbor Ale";
    style.expected[attribute] = Expectation{low, high, assumed};
    return style;
}

inline Cause cause_of(const std::string& name, std::vector<std::string> shown_by, double aroma,
                      double appearance, double flavor, double mouthfeel, double overall) {
    Cause cause;
    cause.name = name;
    cause.shown_by = std::move(shown_by);
    cause.shares[Section::aroma] = aroma;
    cause.shares[Section::appearance] = appearance;
    cause.shares[Section::flavor] = flavor;
    cause.shares[Section::mouthfeel] = mouthfeel;
    cause.shares[Section::overall] = overall;
    return cause;
}

/// Points of the sections: Beer Judge Certification Program, Beer Scoresheet. What a miss costs: of the
/// test's choosing.
inline ScoreSheet fifty_points() {
    ScoreSheet sheet;
    sheet.points[Section::aroma] = 12.0;
    sheet.points[Section::appearance] = 3.0;
    sheet.points[Section::flavor] = 20.0;
    sheet.points[Section::mouthfeel] = 5.0;
    sheet.points[Section::overall] = 10.0;
    sheet.one_step = 3.0;
    sheet.two_steps = 7.0;
    sheet.three_steps = 12.0;
    sheet.assumed_weight = 0.5;
    sheet.in_range_weight = 0.5;
    sheet.threshold = 1.0;
    sheet.spread = 0.4;
    sheet.causes = {
        cause_of("bitterness", {"flavor.bitterness", "flavor.balance"}, 0.0, 0.0, 0.7, 0.0, 0.3),
        cause_of("hops", {"aroma.hop", "flavor.hop"}, 0.4, 0.0, 0.35, 0.0, 0.25),
        cause_of("roast", {"aroma.roast", "flavor.roast"}, 0.35, 0.0, 0.45, 0.0, 0.2),
        cause_of("body", {"mouthfeel.body"}, 0.0, 0.0, 0.15, 0.6, 0.25),
        cause_of("alcohol", {"flavor.alcohol", "mouthfeel.warmth"}, 0.2, 0.0, 0.3, 0.3, 0.2),
        cause_of("color", {"appearance.color"}, 0.0, 0.85, 0.0, 0.0, 0.15),
    };
    return sheet;
}

}  // namespace entrywise::testing
