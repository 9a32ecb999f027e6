#include "brewing/utilization_tinseth.hpp"

#include <doctest/doctest.h>

#include "brewing/bitterness_of_utilization.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("utilization is that of Tinseth's table") {
    struct Row {
        double minutes;
        double gravity;
        double utilization;
    };
    // Tinseth, Hop utilization, web article, 1997.
    for (const Row row : {Row{60.0, 1.050, 0.231}, Row{15.0, 1.060, 0.105}, Row{30.0, 1.057, 0.166},
                          Row{5.0, 1.040, 0.050}, Row{10.0, 1.050, 0.084}, Row{20.0, 1.040, 0.153},
                          Row{30.0, 1.050, 0.177}, Row{45.0, 1.040, 0.232}, Row{60.0, 1.030, 0.276},
                          Row{60.0, 1.070, 0.193}, Row{60.0, 1.100, 0.147}, Row{90.0, 1.050, 0.247}}) {
        CAPTURE(row.minutes);
        CAPTURE(row.gravity);
        CHECK(within(tinseth_utilization(row.minutes * minute, row.gravity * specific_gravity).value(),
                     row.utilization, 0.001));
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
