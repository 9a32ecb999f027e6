#pragma once

#include <array>
#include <string_view>

#include "brewing/balling.hpp"
#include "quantity/plato.hpp"
#include "quantity/quantities.hpp"

namespace entrywise::testing {

/// What a style guide pairs: the middle of its printed numbers and its words for bitterness and body, as
/// levels of the scales (low is 2, medium 4, high 6 of intensity; medium-light 3, medium 4 of body). Roast is
/// our reading of a usual grist, in grams of black malt a liter.
struct GuideWords {
    std::string_view code;
    double original;
    double final;
    double abv;
    double ibus;
    double bitterness_low;
    double bitterness_high;
    double body_low;
    double body_high;
    double roast = 0.0;

    Bitterness bitterness() const { return ibus * ibu; }
    AlcoholByVolume alcohol() const { return abv * percent_by_volume; }
    Extract real_extract() const {
        return entrywise::real_extract(extract_of(original * specific_gravity),
                                       extract_of(final * specific_gravity));
    }
};

/// Source: Beer Judge Certification Program, Beer Style Guidelines, 2021: numbers and coded words.
inline constexpr std::array guide_words{
    GuideWords{"1A", 1.034, 1.003, 3.5, 10.0, 1.0, 2.0, 0.0, 1.0},
    GuideWords{"1B", 1.045, 1.007, 4.75, 13.0, 2.0, 3.0, 2.0, 3.0},
    GuideWords{"3B", 1.052, 1.015, 5.0, 37.5, 5.0, 6.0, 4.0, 4.0},
    GuideWords{"4A", 1.046, 1.009, 5.05, 19.0, 2.0, 3.0, 4.0, 4.0},
    GuideWords{"4B", 1.0555, 1.011, 6.05, 21.5, 3.0, 4.0, 4.0, 4.0},
    GuideWords{"5B", 1.047, 1.009, 4.8, 24.0, 3.0, 4.0, 3.0, 4.0},
    GuideWords{"5D", 1.047, 1.0105, 4.8, 31.0, 4.0, 6.0, 3.0, 3.0},
    GuideWords{"6A", 1.057, 1.012, 5.95, 21.0, 3.0, 4.0, 4.0, 4.0},
    GuideWords{"9A", 1.092, 1.020, 8.5, 21.0, 3.0, 4.0, 5.0, 6.0},
    GuideWords{"10A", 1.0485, 1.011, 4.95, 11.5, 1.0, 3.0, 3.0, 4.0},
    GuideWords{"11B", 1.044, 1.010, 4.2, 32.5, 4.0, 5.0, 3.0, 4.0},
    GuideWords{"12C", 1.060, 1.0125, 6.25, 50.0, 4.0, 6.0, 3.0, 4.0},
    GuideWords{"15B", 1.040, 1.009, 4.4, 35.0, 4.0, 6.0, 3.0, 5.0, 10.0},
    GuideWords{"18B", 1.0525, 1.0125, 5.35, 40.0, 4.0, 6.0, 3.0, 4.0},
    GuideWords{"20C", 1.095, 1.024, 10.0, 70.0, 4.0, 7.0, 5.0, 7.0, 20.0},
    GuideWords{"21A", 1.063, 1.011, 6.5, 55.0, 5.0, 7.0, 3.0, 4.0},
    GuideWords{"22A", 1.075, 1.013, 8.75, 80.0, 5.0, 7.0, 3.0, 4.0},
    GuideWords{"22C", 1.100, 1.023, 10.0, 75.0, 5.0, 7.0, 5.0, 6.0},
    GuideWords{"26C", 1.080, 1.011, 8.5, 30.0, 4.0, 6.0, 3.0, 4.0},
};

/// How many steps a level lies outside two words, whichever side.
constexpr double steps_outside(double level, double low, double high) {
    return level > high ? level - high : (level < low ? low - level : 0.0);
}

}  // namespace entrywise::testing
