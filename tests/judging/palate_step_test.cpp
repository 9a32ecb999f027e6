#include "judging/palate_step.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

// Yu and Pickering, American Journal of Enology and Viticulture 59, 2008: some one percent of alcohol is told
// in wine.
TEST_CASE("a percent of alcohol is a step at any strength") {
    CHECK(within(palate_step(4.0 * percent_by_volume).value(), 1.0, 0.1));
    CHECK(palate_step(4.0 * percent_by_volume) == palate_step(10.0 * percent_by_volume));
    CHECK(within(palate_steps(7.0 * percent_by_volume) - palate_steps(5.0 * percent_by_volume), 2.0, 0.2));
}

// Weber and Fechner; Fechner, Elemente der Psychophysik, 1860: what is told is a share of what is there.
TEST_CASE(
    "bitterness and color are told by shares where there is much of them, and by even steps where there is "
    "little") {
    CHECK(within(palate_step(80.0 * ibu) / palate_step(40.0 * ibu), 2.0, 1e-9));
    CHECK(palate_step(4.0 * ibu) == palate_step(8.0 * ibu));
    CHECK(within(palate_step(30.0 * srm) / palate_step(15.0 * srm), 2.0, 1e-9));
    CHECK(palate_step(2.0 * srm) == palate_step(4.0 * srm));
    CHECK(within(palate_steps(80.0 * ibu) - palate_steps(40.0 * ibu),
                 palate_steps(160.0 * ibu) - palate_steps(80.0 * ibu), 1e-9));
}

TEST_CASE("a place on the palate's scale grows by a step where a step is added") {
    for (const double units : {10.0, 30.0, 60.0, 90.0}) {
        CAPTURE(units);
        const Bitterness step = palate_step(units * ibu);
        CHECK(within(palate_steps(units * ibu + step) - palate_steps(units * ibu), 1.0, 0.15));
    }
    for (const double units : {3.0, 8.0, 20.0}) {
        CAPTURE(units);
        CHECK(within(palate_steps(units * srm + palate_step(units * srm)) - palate_steps(units * srm), 1.0,
                     0.15));
    }
    CHECK(palate_steps(40.0 * srm) == palate_steps(90.0 * srm));
}

// Water is where every number begins. Eight points of gravity make about one percent of alcohol: common
// practice.
TEST_CASE("gravities are counted from water, the original one by the alcohol it becomes") {
    CHECK(palate_steps_of_original_gravity(1.0 * specific_gravity) == 0.0);
    CHECK(palate_steps_of_final_gravity(1.0 * specific_gravity) == 0.0);
    CHECK(palate_steps(0.0 * percent_by_volume) == 0.0);
    CHECK(within(palate_steps_of_original_gravity(1.048 * specific_gravity), 6.0, 0.5));
    CHECK(within(palate_steps_of_final_gravity(1.016 * specific_gravity), 4.0, 0.5));
}

TEST_CASE("the palate's scale goes on without a leap where shares take over from even steps") {
    for (double units = 1.0; units <= 60.0; units += 0.25) {
        CAPTURE(units);
        const double step = palate_steps((units + 0.25) * ibu) - palate_steps(units * ibu);
        CHECK(step > 0.0);
        CHECK(step < 0.05);
    }
}
