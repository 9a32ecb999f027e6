#include "brewing/yeast_stress.hpp"

#include <doctest/doctest.h>

using namespace entrywise;

TEST_CASE("usual gravities do not stress yeast") {
    CHECK(yeast_stress(1.040 * specific_gravity).value() == 0.0);
    CHECK(yeast_stress(1.080 * specific_gravity).value() == 0.0);
}

TEST_CASE("strong worts stop a few points early") {
    // Common practice: barley wines end some points short of what the yeast does in ordinary beer.
    const double points = yeast_stress(1.110 * specific_gravity).value() * 100.0;
    CHECK(points < -1.0);
    CHECK(points > -6.0);
    CHECK(yeast_stress(1.120 * specific_gravity) < yeast_stress(1.090 * specific_gravity));
}
