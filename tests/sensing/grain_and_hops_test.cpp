#include <doctest/doctest.h>

#include <array>

#include "sensing/grain.hpp"
#include "sensing/hops.hpp"
#include "sensing/saturation.hpp"
#include "tests/support/palate.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

using LevelOfDose = double (*)(Concentration);

double roast_of(Concentration roast) {
    return roast_level(usual_palate().roast, roast);
}

double caramel_of(Concentration caramel) {
    return caramel_level(usual_palate().caramel, caramel);
}

constexpr std::array<LevelOfDose, 6> all_levels{toast_level, caramel_of,      roast_of,
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
            CHECK((at(level, grams) > before || before == 7.0));
            CHECK(at(level, grams) <= 7.0);
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
// strong, 16 very strong; what the haziest ales take, some 20, is very high.
TEST_CASE("dry hops have their usual words, within a step") {
    CHECK(within(at(hop_aroma_level, 0.5), 1.5, 1.0));
    CHECK(within(at(hop_aroma_level, 2.0), 3.0, 1.0));
    CHECK(within(at(hop_aroma_level, 8.0), 5.5, 1.0));
    CHECK(within(at(hop_aroma_level, 16.0), 6.5, 0.5));
    CHECK(at(hop_aroma_level, 8.0) < 6.0);
    CHECK(at(hop_aroma_level, 20.0) > 6.5);
    CHECK(at(hop_flavor_level, 20.0) > 6.5);
    CHECK(at(hop_aroma_level, 4.0) - at(hop_aroma_level, 2.0) >
          at(hop_aroma_level, 16.0) - at(hop_aroma_level, 8.0));
}

// Common practice, for a beer of some 200 g of malt a liter: roast under 1 % of the grist only colors, 3 % is
// low, 5 to 6 % medium-low to medium, over 10 % medium-high and more.
TEST_CASE("roast has its usual words by share of the grist, within a step") {
    CHECK(at(roast_of, 1.0) <= 1.0);
    CHECK(within(at(roast_of, 6.0), 2.0, 1.0));
    CHECK(within(at(roast_of, 11.0), 3.5, 1.0));
    CHECK(within(at(roast_of, 24.0), 5.5, 1.0));
}

// Common practice, for a beer of some 240 g of malt a liter: crystal malt is hardly noticed under 3 % of the
// grist, low at 5 %, medium-low to medium at 8 %, medium-high and more at a fifth.
TEST_CASE("caramel has its usual words by share of the grist, within a step") {
    CHECK(at(caramel_of, 5.0) <= 1.5);
    CHECK(within(at(caramel_of, 11.0), 2.0, 1.0));
    CHECK(within(at(caramel_of, 20.0), 3.5, 1.0));
    CHECK(within(at(caramel_of, 48.0), 5.5, 1.0));
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021: malt is low in a light lager, medium in a
// helles, high in a dunkel and in a doppelbock.
TEST_CASE("malt has its usual words, within a step") {
    const auto malt_at = [](double real_extract, double richness, double ratio) {
        return malt_level(usual_palate().malt, real_extract * plato, richness, ratio, 0.0);
    };
    CHECK(within(malt_at(2.2, 0.7, 0.3), 1.5, 1.0));
    CHECK(within(malt_at(4.0, 0.9, 0.4), 3.5, 1.0));
    CHECK(within(malt_at(5.1, 2.2, 0.45), 5.0, 1.0));
    CHECK(within(malt_at(8.4, 2.0, 0.23), 6.0, 1.0));
}

// Common practice: drier beer, more hops, acid and sugar in place of malt make a beer less malty.
TEST_CASE("extract and rich malts tell more of malt, hops and acid less") {
    const MaltMap& map = usual_palate().malt;
    const double usual = malt_level(map, 4.8 * plato, 1.0, 0.5, 0.0);
    CHECK(malt_level(map, 3.0 * plato, 1.0, 0.5, 0.0) < usual - 0.3);
    CHECK(malt_level(map, 4.8 * plato, 1.8, 0.5, 0.0) > usual + 0.3);
    CHECK(malt_level(map, 4.8 * plato, 1.0, 1.0, 0.0) < usual - 0.3);
    CHECK(malt_level(map, 4.8 * plato, 1.0, 0.5, 5.0) < usual - 0.3);
    CHECK(malt_level(map, 0.0 * plato, 0.0, 2.0, 7.0) >= 0.0);
    CHECK(malt_level(map, 20.0 * plato, 6.0, 0.0, 0.0) <= 7.0);
}

// Palmer, How to Brew, 2017, from memory: some 5.3 kg of pale ale malt at 72 % make 20 L of 1.060.
TEST_CASE("a beer of pale ale malt alone is of richness one") {
    const auto richness = [](double grams_per_liter) {
        return malt_richness(grams_per_liter * gram_per_liter, 14.7 * plato, 1.060 * specific_gravity, 0.0);
    };
    CHECK(within(richness(5300.0 / 20.0), 1.0, 0.08));
    CHECK(within(richness(5300.0 / 40.0), 0.5, 0.04));
}

TEST_CASE("malt can be masked altogether, and a thin body alone does not do it") {
    const MaltMap map = usual_palate().malt;
    CHECK(malt_level(map, 1.0 * plato, 0.2, 1.3, 7.0) == 0.0);
    CHECK(malt_level(map, 0.0 * plato, 1.0, 0.5, 0.0) > 0.0);
    CHECK(malt_level(map, 30.0 * plato, 5.0, 0.0, 0.0) == 7.0);
}
