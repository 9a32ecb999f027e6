#include "brewing/fusel.hpp"

#include <doctest/doctest.h>

using namespace entrywise;

// Common practice: a cool, well pitched wort of usual strength gives no hot alcohol.
TEST_CASE("nothing is hot about a usual fermentation") {
    CHECK(fusel_level(-2.0 * kelvin, 0.0, 1.055 * specific_gravity) == 0.0);
    CHECK(fusel_level(0.0 * kelvin, 1.0, 1.079 * specific_gravity) == 0.0);
}

// Common practice: 2 to 4 °C less is the cure for a beer that is hot by a step or more.
TEST_CASE("four degrees above the range cost about a step") {
    const double level = fusel_level(4.0 * kelvin, 0.0, 1.055 * specific_gravity);
    CHECK(level >= 0.7);
    CHECK(level <= 1.5);
}

TEST_CASE("heat, hunger and strength add up, each the more the further, to three steps") {
    double before = 0.0;
    for (double step = 1.0; step <= 12.0; step += 1.0) {
        const double level =
            fusel_level(step * kelvin, -0.2 * step, (1.080 + 0.005 * step) * specific_gravity);
        CHECK(level >= before);
        CHECK(level <= 3.0);
        before = level;
    }
    CHECK(before > 2.0);
}

// Common practice: a barley wine that is fermented cool and pitched well is warm by its alcohol, hardly hot.
// How little is a working value.
TEST_CASE("the strongest wort alone gives a fifth of a step") {
    const double level = fusel_level(0.0 * kelvin, 0.0, 1.140 * specific_gravity);
    CHECK(level > 0.15);
    CHECK(level < 0.22);
}
