#include "brewing/water_density.hpp"

#include <doctest/doctest.h>

#include "tests/published/water_density.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("water has the density of the steam tables") {
    // IAPWS 1995, from memory.
    for (const published::WaterDensity& row : published::water_densities) {
        CAPTURE(row.celsius);
        CHECK(within(in(water_density(celsius(row.celsius)), gram_per_liter), row.density, 0.03));
    }
}

TEST_CASE("wort at the boil shrinks by four percent until it is cold") {
    // Common practice.
    CHECK(within(water_density(celsius(100.0)) / water_density(celsius(20.0)), 0.96, 0.001));
}
