#include "brewing/ethanol_density.hpp"

#include <doctest/doctest.h>

#include "tests/published/ethanol_density.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

double density(double by_mass, double degrees) {
    return in(ethanol_mixture_density(by_mass * whole, celsius(degrees)), gram_per_liter);
}

}  // namespace

TEST_CASE("the density of five percent by volume is that of the table") {
    // OIML Recommendation 22, International alcoholometric tables, 1975.
    const Share by_mass = ethanol_by_mass(5.0 * percent_by_volume);
    CHECK(within(density(by_mass.value(), 20.0), published::density_of_five_percent_by_volume, 0.01));
}

TEST_CASE("densities at 20 degrees are those of the table") {
    // OIML Recommendation 22, 1975, from memory.
    for (const published::EthanolMixture& row : published::ethanol_mixtures) {
        CAPTURE(row.by_volume);
        const Share by_mass = ethanol_by_mass(row.by_volume * percent_by_volume);
        CHECK(within(by_mass / percent, row.by_mass, 0.02));
        CHECK(within(density(by_mass.value(), 20.0), row.density, 0.05));
    }
}

TEST_CASE("densities from 10 to 30 degrees are those of the handbook") {
    // Perry, Chemical Engineers' Handbook, from memory.
    for (const published::EthanolDensities& row : published::ethanol_densities) {
        CAPTURE(row.percent_by_mass);
        for (std::size_t place = 0; place < row.relative.size(); ++place) {
            const double degrees = published::degrees_of_ethanol_table[place];
            CAPTURE(degrees);
            CHECK(within(density(row.percent_by_mass / 100.0, degrees),
                         published::most_density_of_water * row.relative[place], 0.1));
        }
    }
}

TEST_CASE("pure water and pure ethanol have their own densities") {
    // Water at 4, 30 and 40 °C: 999.97, 995.65 and 992.22; ethanol at 20 °C: 789.24. Handbook values, from
    // memory.
    CHECK(within(density(0.0, 4.0), 999.97, 0.01));
    CHECK(within(density(0.0, 30.0), 995.65, 0.01));
    CHECK(within(density(0.0, 40.0), 992.215, 0.003));
    CHECK(within(density(1.0, 20.0), 789.24, 0.01));
}

TEST_CASE("ethanol grows with warmth more than water does") {
    // Volumetric expansion of ethanol about 1.1e-3 a kelvin. Handbook value, from memory.
    CHECK(within((density(1.0, 15.0) - density(1.0, 25.0)) / 10.0 / density(1.0, 20.0), 1.09e-3, 0.03e-3));
}

TEST_CASE("shares by mass and volume undo each other") {
    for (const double by_volume : {0.0, 4.8, 12.0, 55.0, 100.0}) {
        CAPTURE(by_volume);
        const Share by_mass = ethanol_by_mass(by_volume * percent_by_volume);
        CHECK(within(ethanol_by_volume(by_mass).value(), by_volume, 1e-7));
    }
}
