#include "judging/notice.hpp"

#include <doctest/doctest.h>

#include "tests/support/judging.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

// ASTM E1432: the threshold is what half of all judges notice.
TEST_CASE("half of all judges notice a miss of one threshold") {
    CHECK(within(chance_of_notice(1.0, fifty_points()), 0.5, 1e-12));
    CHECK(within(chance_of_notice(-1.0, fifty_points()), 0.5, 1e-12));
    ScoreSheet dull = fifty_points();
    dull.threshold = 2.0;
    CHECK(within(chance_of_notice(2.0, dull), 0.5, 1e-12));
}

// Abramowitz and Stegun, Handbook of mathematical functions, 1964, table 26.1: 84.1 % lie below one standard
// deviation, 97.7 % below two.
TEST_CASE("judges differ as the normal distribution") {
    CHECK(within(chance_of_notice(1.4, fifty_points()), 0.8413, 1e-4));
    CHECK(within(chance_of_notice(1.8, fifty_points()), 0.9772, 1e-4));
    CHECK(within(chance_of_notice(0.6, fifty_points()), 0.1587, 1e-4));
}

TEST_CASE("no miss is not noticed, a larger one never less, and a huge one always") {
    CHECK(chance_of_notice(0.0, fifty_points()) == 0.0);
    double before = 0.0;
    for (double steps = 0.0; steps <= 7.0; steps += 0.1) {
        CHECK(chance_of_notice(steps, fifty_points()) >= before);
        CHECK(chance_of_notice(steps, fifty_points()) == chance_of_notice(-steps, fifty_points()));
        before = chance_of_notice(steps, fifty_points());
    }
    CHECK(within(before, 1.0, 1e-12));
}

TEST_CASE("a miss costs what the score sheet says for whole steps, and never less for more") {
    CHECK(points_for(0.0, fifty_points()) == 0.0);
    CHECK(within(points_for(1.0, fifty_points()), 3.0, 1e-12));
    CHECK(within(points_for(-2.0, fifty_points()), 7.0, 1e-12));
    CHECK(within(points_for(3.0, fifty_points()), 12.0, 1e-12));
    double before = 0.0;
    for (double steps = 0.0; steps <= 7.0; steps += 0.1) {
        CHECK(points_for(steps, fifty_points()) >= before);
        before = points_for(steps, fifty_points());
    }
    CHECK(before < 20.0);
}
