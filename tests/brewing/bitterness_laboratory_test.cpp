#include "brewing/bitterness_laboratory.hpp"

#include <doctest/doctest.h>

#include "tests/published/bitterness_laboratory.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("laboratories agree as the method says") {
    // MEBAK, Collected brewing analysis methods: results of two laboratories, and two of one.
    CHECK(within(laboratory_reproducibility(30.0 * ibu).value(),
                 published::reproducibility_at_30_ibu / published::distance_over_deviation, 0.02));
    CHECK(within(laboratory_repeatability(30.0 * ibu).value(),
                 published::repeatability_at_30_ibu / published::distance_over_deviation, 0.01));
}

TEST_CASE("no bitterness is no negative spread") {
    CHECK(laboratory_repeatability(0.0 * ibu).value() == 0.0);
    CHECK(laboratory_reproducibility(0.0 * ibu).value() > 0.0);
}
