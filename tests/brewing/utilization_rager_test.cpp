#include "brewing/utilization_rager.hpp"

#include <doctest/doctest.h>

#include "tests/published/hop_utilization.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("utilization is that of Rager's table, to a point") {
    // Rager, Calculating hop bitterness in beer, Zymurgy special issue, 1990, from memory. The curve is a fit
    // to the table.
    for (const published::TableUtilization& row : published::rager_table) {
        CAPTURE(row.minutes);
        CHECK(within(rager_utilization(row.minutes * minute, 1.050 * specific_gravity) / percent, row.percent,
                     1.05));
    }
}

TEST_CASE("only strong wort lowers it") {
    const auto at = [](double gravity) {
        return rager_utilization(60.0 * minute, gravity * specific_gravity);
    };
    CHECK(at(1.030) == at(1.050));
    // Rager 1990: a gravity adjustment of 0.25 at 1.100.
    CHECK(within(at(1.050) / at(1.100), 1.25, 1e-9));
}
