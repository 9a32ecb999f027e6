#include "brewing/utilization_tinseth.hpp"

#include <doctest/doctest.h>

#include "brewing/bitterness_of_utilization.hpp"
#include "tests/published/hop_utilization.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("utilization is that of Tinseth's table") {
    // Tinseth, Hop utilization, web article, 1997.
    for (const published::TinsethUtilization& row : published::tinseth_table) {
        CAPTURE(row.minutes);
        CAPTURE(row.gravity);
        CHECK(within(tinseth_utilization(row.minutes * minute, row.gravity * specific_gravity).value(),
                     row.share, 0.001));
    }
}

TEST_CASE("no boil, no bitterness") {
    CHECK(tinseth_utilization(0.0 * minute, 1.050 * specific_gravity).value() == 0.0);
}

TEST_CASE("bitterness counts milligrams of alpha acids a liter") {
    // One ounce of one percent alpha acids in a US gallon is 74.89 mg/L. Common practice.
    const Concentration alpha_acids = 0.01 * ounce / gallon;
    CHECK(within(bitterness_of_utilization(alpha_acids, 100.0 * percent).value(), 74.89, 0.01));
    CHECK(within(bitterness_of_utilization(alpha_acids, 25.0 * percent).value(), 18.72, 0.01));
}
