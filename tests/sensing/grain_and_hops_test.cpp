#include <doctest/doctest.h>

#include <array>

#include "sensing/grain.hpp"
#include "sensing/hops.hpp"
#include "sensing/saturation.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

using LevelOfDose = double (*)(Concentration);

constexpr std::array<LevelOfDose, 7> all_levels{malt_level,  toast_level,     caramel_level,   roast_level,
                                                smoke_level, hop_aroma_level, hop_flavor_level};

double at(LevelOfDose level, double grams) {
    return level(grams * gram_per_liter);
}

}  // namespace

TEST_CASE("nothing tastes of nothing, more never of less, and no level leaves the scale") {
    for (const LevelOfDose level : all_levels) {
        CHECK(at(level, 0.0) == 0.0);
        double before = 0.0;
        for (double grams = 1.0; grams <= 2000.0; grams *= 1.3) {
            CHECK(at(level, grams) > before);
            CHECK(at(level, grams) < 7.0);
            before = at(level, grams);
        }
    }
}

TEST_CASE("strong doses flatten out: the second half of a huge dose tells little") {
    for (const LevelOfDose level : all_levels) {
        CHECK(at(level, 4000.0) - at(level, 2000.0) < 0.6);
        CHECK(at(level, 4000.0) > 6.0);
    }
}

TEST_CASE("a saturating curve passes half of the strongest at its half dose") {
    CHECK(within(saturating_level(12.0, {.half_at = 12.0, .steepness = 1.6}), 3.5, 1e-12));
    CHECK(saturating_level(-3.0, {.half_at = 12.0, .steepness = 1.6}) == 0.0);
    CHECK(saturating_level(1.0, {.half_at = 12.0, .steepness = 2.0}) <
          saturating_level(1.0, {.half_at = 12.0, .steepness = 1.0}));
}

// Lafontaine and Shellhammer, Impact of static dry-hopping rate, Journal of the Institute of Brewing 124,
// 2018: from 2 to 4 g/L tells more than from 8 to 16. Common practice: 2 g/L of dry hop is noticed well, 8 is
// strong, 16 very strong.
TEST_CASE("dry hops have their usual words, within a step") {
    CHECK(within(at(hop_aroma_level, 0.5), 1.5, 1.0));
    CHECK(within(at(hop_aroma_level, 2.0), 3.0, 1.0));
    CHECK(within(at(hop_aroma_level, 8.0), 5.5, 1.0));
    CHECK(within(at(hop_aroma_level, 16.0), 6.5, 1.0));
    CHECK(at(hop_aroma_level, 4.0) - at(hop_aroma_level, 2.0) >
          at(hop_aroma_level, 16.0) - at(hop_aroma_level, 8.0));
}

// Common practice, for a beer of some 200 g of malt a liter: roast under 1 % of the grist only colors, 3 % is
// low, 5 to 6 % medium, over 10 % high.
TEST_CASE("roast has its usual words by share of the grist, within a step") {
    CHECK(at(roast_level, 1.0) <= 1.0);
    CHECK(within(at(roast_level, 6.0), 2.0, 1.0));
    CHECK(within(at(roast_level, 11.0), 4.0, 1.0));
    CHECK(within(at(roast_level, 24.0), 6.0, 1.0));
}

// Common practice, for a beer of some 240 g of malt a liter: crystal malt is hardly noticed under 3 % of the
// grist, low at 5 %, medium at 8 to 10 %, high at a fifth.
TEST_CASE("caramel has its usual words by share of the grist, within a step") {
    CHECK(at(caramel_level, 5.0) <= 1.5);
    CHECK(within(at(caramel_level, 11.0), 2.0, 1.0));
    CHECK(within(at(caramel_level, 20.0), 4.0, 1.0));
    CHECK(within(at(caramel_level, 48.0), 6.0, 1.0));
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021: a helles of some 190 g/L of malt is medium
// malty, a light lager of 100 g/L low.
TEST_CASE("base malt alone is low in a light beer and medium in a stronger one, within a step") {
    CHECK(within(at(malt_level, 100.0), 2.0, 1.0));
    CHECK(within(at(malt_level, 230.0), 4.0, 1.0));
}
