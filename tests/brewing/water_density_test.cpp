#include "brewing/water_density.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("water has the density of the steam tables") {
    struct Row {
        double celsius;
        double density;
    };
    // IAPWS, Release on the thermodynamic properties of ordinary water substance, 1995, at one atmosphere,
    // from memory.
    for (const Row row : {Row{0.0, 999.84}, Row{3.98, 999.97}, Row{20.0, 998.21}, Row{25.0, 997.05},
                          Row{50.0, 988.03}, Row{80.0, 971.79}, Row{99.97, 958.37}}) {
        CAPTURE(row.celsius);
        CHECK(within(in(water_density(celsius(row.celsius)), gram_per_liter), row.density, 0.03));
    }
}

TEST_CASE("wort at the boil shrinks by four percent until it is cold") {
    // Common practice.
    CHECK(within(water_density(celsius(100.0)) / water_density(celsius(20.0)), 0.96, 0.001));
}
