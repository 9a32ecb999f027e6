#include "brewing/utilization_garetz.hpp"

#include <doctest/doctest.h>

#include "brewing/bitterness_of_utilization.hpp"
#include "brewing/utilization_tinseth.hpp"
#include "tests/published/hop_utilization.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

constexpr GaretzBrew usual_brew{1.050 * specific_gravity, 1.0 * whole, {}};

}  // namespace

TEST_CASE("utilization is that of Garetz's table") {
    // Garetz, Using hops, 1994, from memory.
    for (const published::TableUtilization& row : published::garetz_table) {
        CAPTURE(row.minutes);
        CHECK(within(garetz_utilization(row.minutes * minute) / percent, row.percent, 1e-9));
    }
}

TEST_CASE("the hopping rate lowers bitterness by the bitterness itself") {
    // Garetz 1994: at 26 IBU the hopping-rate factor is 1.1, so that 143 mg/L at 20 % give 26 IBU.
    const Bitterness bitterness = garetz_bitterness(143.0 * milligram_per_liter, 60.0 * minute, usual_brew);
    CHECK(within(bitterness.value(), 26.0, 0.01));
}

TEST_CASE("altitude and gravity lower bitterness") {
    const auto bitterness = [](const GaretzBrew& brew) {
        return garetz_bitterness(143.0 * milligram_per_liter, 60.0 * minute, brew);
    };
    GaretzBrew high = usual_brew;
    high.altitude = Length::from_value(1676.4);
    // Garetz 1994: 5500 feet are a factor of 1.2, which the hopping rate gives a little back of.
    CHECK(within(bitterness(usual_brew) / bitterness(high), 1.185, 0.01));
    GaretzBrew strong = usual_brew;
    strong.boil_gravity = 1.090 * specific_gravity;
    CHECK(bitterness(strong) < bitterness(usual_brew));
}

TEST_CASE("it reads lower than Tinseth") {
    // Hosom, web reports, 2015..2020: reads low everywhere.
    for (const double minutes : {5.0, 15.0, 30.0, 60.0}) {
        CAPTURE(minutes);
        const Concentration alpha_acids = 150.0 * milligram_per_liter;
        const Share tinseth = tinseth_utilization(minutes * minute, usual_brew.boil_gravity);
        CHECK(garetz_bitterness(alpha_acids, minutes * minute, usual_brew) <
              bitterness_of_utilization(alpha_acids, tinseth));
    }
}
