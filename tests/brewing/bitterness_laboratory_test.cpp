#include "brewing/bitterness_laboratory.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("laboratories agree as the method says") {
    // MEBAK, Collected brewing analysis methods: at 30 IBU results of two laboratories lie within 4.9 in 95
    // of 100 pairs, and two of one laboratory within 1.14.
    CHECK(within(laboratory_reproducibility(30.0 * ibu).value(), 4.9 / 2.77, 0.02));
    CHECK(within(laboratory_repeatability(30.0 * ibu).value(), 1.14 / 2.77, 0.01));
}

TEST_CASE("no bitterness is no negative spread") {
    CHECK(laboratory_repeatability(0.0 * ibu).value() == 0.0);
    CHECK(laboratory_reproducibility(0.0 * ibu).value() > 0.0);
}
