#include "brewing/bitterness_aging.hpp"

#include <doctest/doctest.h>

#include "tests/published/hop_aging.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("home-made beer loses up to a third") {
    // Hosom, web report on the aging of bitterness, 2015..2020.
    CHECK(within(bitterness_left_in_home_made_beer(0.0 * week).value(), 1.0, 1e-12));
    CHECK(bitterness_left_in_home_made_beer(4.0 * week) < bitterness_left_in_home_made_beer(1.0 * week));
    CHECK(
        within(bitterness_left_in_home_made_beer(16.0 * week).value(), published::left_after_16_weeks, 0.01));
    CHECK(bitterness_left_in_home_made_beer(100.0 * week).value() >= 0.67);
}

TEST_CASE("bottled beer loses a seventh in eight months") {
    // Forster, storage of beer bitterness, 2004.
    CHECK(
        within(bitterness_left_in_bottled_beer(243.5 * day).value(), published::left_after_8_months, 0.001));
    CHECK(bitterness_left_in_bottled_beer(0.0 * day).value() == 1.0);
}
