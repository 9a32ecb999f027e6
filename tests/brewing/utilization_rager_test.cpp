#include "brewing/utilization_rager.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("utilization is that of Rager's table, to a point") {
    struct Row {
        double minutes;
        double utilization;
    };
    // Rager, Calculating hop bitterness in beer, Zymurgy special issue, 1990, middles of the ranges of time,
    // from memory. The curve is a fit to the table.
    for (const Row row :
         {Row{0.0, 5.0}, Row{8.0, 6.0}, Row{13.0, 8.0}, Row{18.0, 10.1}, Row{23.0, 12.1}, Row{28.0, 15.3},
          Row{33.0, 18.8}, Row{38.0, 22.8}, Row{43.0, 26.9}, Row{48.0, 28.1}, Row{55.0, 30.0}}) {
        CAPTURE(row.minutes);
        CHECK(within(rager_utilization(row.minutes * minute, 1.050 * specific_gravity) / percent,
                     row.utilization, 1.05));
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
