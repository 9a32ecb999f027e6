#include "sensing/bitterness.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "style/attribute.hpp"
#include "tests/sensing/guide_words.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double level_at(double ibus, double alcohol = 5.0, double real_extract = 4.2, double roast = 0.0) {
    return bitterness_level(ibus * ibu, alcohol * percent_by_volume, real_extract * plato,
                            roast * gram_per_liter);
}

double balance_at(double ibus, double gravity = 1.050, double attenuation = 0.7655) {
    return balance_level(ibus * ibu, gravity * specific_gravity, attenuation * fully_attenuated);
}

}  // namespace

TEST_CASE("the middle of a guide's numbers is as bitter as its words say") {
    double squares = 0.0;
    for (const GuideWords& style : guide_words) {
        const double level = bitterness_level(style.bitterness(), style.alcohol(), style.real_extract(),
                                              style.roast * gram_per_liter);
        const double outside = steps_outside(level, style.bitterness_low, style.bitterness_high);
        CAPTURE(style.code);
        CAPTURE(level);
        CHECK(outside < 1.0);
        squares += outside * outside;
    }
    // The stated standard error is half a step.
    CHECK(std::sqrt(squares / static_cast<double>(guide_words.size())) < 0.5);
}

// Common practice: 10 IBU is a low bitterness, 20 medium-low, 60 high and 90 very high.
TEST_CASE("bitterness has its usual words") {
    CHECK(within(level_at(10.0), 2.0, 0.5));
    CHECK(within(level_at(20.0), 3.0, 0.5));
    CHECK(within(level_at(60.0), 6.0, 0.5));
    CHECK(within(level_at(90.0), 7.0, 0.6));
    CHECK(level_at(0.0) == 0.0);
}

TEST_CASE("more bitter substances never taste less bitter, and each tells less than the one before") {
    double before = level_at(0.0);
    double gain_before = 10.0;
    for (double ibus = 5.0; ibus <= 150.0; ibus += 5.0) {
        const double level = level_at(ibus);
        CHECK(level >= before);
        CHECK(level - before <= gain_before + 1e-9);
        gain_before = level - before;
        before = level;
    }
    CHECK(before <= 7.0);
}

// Hahn et al., Journal of Agricultural and Food Chemistry 66, 2018: alcohol adds; Pangborn, Lewis and
// Yamashita, Journal of the Institute of Brewing 89, 1983: sugar takes away.
TEST_CASE("alcohol and roast add to bitterness, extract takes away") {
    double before = 0.0;
    for (double alcohol = 0.0; alcohol <= 14.0; alcohol += 1.0) {
        CHECK(level_at(30.0, alcohol) >= before);
        before = level_at(30.0, alcohol);
    }
    before = 10.0;
    for (double extract = 0.0; extract <= 14.0; extract += 0.5) {
        CHECK(level_at(30.0, 5.0, extract) <= before);
        before = level_at(30.0, 5.0, extract);
    }
    before = 0.0;
    for (double roast = 0.0; roast <= 60.0; roast += 5.0) {
        CHECK(level_at(30.0, 5.0, 4.2, roast) >= before);
        before = level_at(30.0, 5.0, 4.2, roast);
    }
}

// Common practice: two such beers a taster tells apart differ by some 5 IBU at medium bitterness.
TEST_CASE("five units are less than a step apart, twenty more than one") {
    CHECK(level_at(30.0) - level_at(25.0) < 0.75);
    CHECK(level_at(40.0) - level_at(20.0) > 1.0);
}

// Daniels, Designing Great Beers, 1996: a ratio of 0.5 is even, 0.3 malty, 0.9 and more bitter.
TEST_CASE("balance follows the ratio of bitterness to gravity") {
    CHECK(within(balance_at(25.0), 3.0, 0.1));
    CHECK(within(balance_at(15.0), 1.0, 0.5));
    CHECK(within(balance_at(47.5), 5.0, 0.5));
    CHECK(balance_at(0.0) == 0.0);
}

TEST_CASE("more bitterness never leans to malt, more gravity never to bitterness, drier never to malt") {
    double before = -1.0;
    for (double ibus = 0.0; ibus <= 120.0; ibus += 5.0) {
        CHECK(balance_at(ibus) >= before);
        before = balance_at(ibus);
    }
    CHECK(before <= 6.0);
    before = 7.0;
    for (double gravity = 1.000; gravity <= 1.140; gravity += 0.005) {
        CHECK(balance_at(30.0, gravity) <= before);
        before = balance_at(30.0, gravity);
    }
    before = -1.0;
    for (double attenuation = 0.3; attenuation <= 1.1; attenuation += 0.1) {
        CHECK(balance_at(30.0, 1.050, attenuation) >= before);
        before = balance_at(30.0, 1.050, attenuation);
    }
}
