#include "sensing/bitterness.hpp"

#include <doctest/doctest.h>

#include "tests/support/palate.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double level_at(double ibus, double gravity = 1.050, double sour = 0.0, double roast = 0.0) {
    return bitterness_level(usual_palate().bitterness, ibus * ibu, gravity * specific_gravity, sour, roast);
}

double balance_at(double ibus, double gravity = 1.050, double attenuation = 0.7655, double volumes = 2.5) {
    return balance_level(usual_palate().balance, ibus * ibu, gravity * specific_gravity,
                         attenuation * fully_attenuated, volumes * volume_of_co2);
}

}  // namespace

// Common practice: 10 IBU in a beer of 1.050 is very low to low, 20 medium-low, 60 high and 90 very high.
TEST_CASE("bitterness has its usual words") {
    CHECK(within(level_at(10.0), 1.5, 0.5));
    CHECK(within(level_at(20.0), 3.0, 0.5));
    CHECK(within(level_at(60.0), 6.5, 0.75));
    CHECK(within(level_at(90.0), 7.0, 0.6));
    CHECK(level_at(0.0) == 0.0);
}

TEST_CASE("more bitter substances never taste less bitter, and each tells no more than the one before") {
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

// Pangborn, Lewis and Yamashita, Journal of the Institute of Brewing 89, 1983: sugar takes away. Common
// practice: bitterness hides in strong malty beer, behind acid and behind roast.
TEST_CASE("malt, acid and roast cover bitterness") {
    double before = 8.0;
    for (double gravity = 1.030; gravity <= 1.120; gravity += 0.010) {
        CHECK(level_at(30.0, gravity) < before);
        before = level_at(30.0, gravity);
    }
    CHECK(level_at(30.0, 1.040) - level_at(30.0, 1.090) > 0.5);
    CHECK(level_at(30.0, 1.050, 5.0) < level_at(30.0) - 0.5);
    CHECK(level_at(30.0, 1.050, 0.0, 5.0) < level_at(30.0));
    CHECK(level_at(30.0, 1.050, 7.0, 7.0) >= 0.0);
}

// Common practice: two such beers a taster tells apart differ by some 5 IBU at medium bitterness.
TEST_CASE("five units are less than a step apart, twenty more than one") {
    CHECK(level_at(30.0) - level_at(25.0) < 0.75);
    CHECK(level_at(40.0) - level_at(20.0) > 1.0);
}

// Daniels, Designing Great Beers, 1996: a ratio of 0.5 is even, 0.3 malty, 0.9 and more bitter.
TEST_CASE("balance follows the ratio of bitterness to gravity") {
    CHECK(within(balance_at(25.0), 3.0, 0.5));
    CHECK(within(balance_at(15.0), 1.0, 0.5));
    CHECK(within(balance_at(47.5), 5.0, 0.5));
    CHECK(balance_at(0.0) == 0.0);
    CHECK(within(bitterness_ratio(25.0 * ibu, 1.050 * specific_gravity), 0.5, 1e-9));
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
    CHECK(balance_at(30.0, 1.080, 0.80, 3.5) > balance_at(30.0, 1.080, 0.80, 2.0));
}
