#include "brewing/carbonation.hpp"

#include <doctest/doctest.h>

#include "tests/published/carbonation.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("kegs hold what the chart says") {
    // American Society of Brewing Chemists, chart of carbon dioxide in beer; all but the first from memory.
    for (const published::KegCarbonation& row : published::keg_carbonations) {
        CAPTURE(row.fahrenheit);
        CAPTURE(row.psi);
        const Temperature temperature = fahrenheit(row.fahrenheit);
        const GaugePressure pressure = row.psi * pound_per_square_inch;
        CHECK(within(carbonation_at_equilibrium(pressure, temperature).value(), row.volumes, 0.012));
        CHECK(within(in(keg_pressure(row.volumes * volume_of_co2, temperature), pound_per_square_inch),
                     row.psi, 0.12));
        CHECK(within(carbonation_of(dissolved_carbon_dioxide(pressure, temperature)).value(),
                     row.volumes + 0.05, 0.03));
    }
}

TEST_CASE("a volume is not quite two grams a liter") {
    // Density of carbon dioxide at 0 °C and one atmosphere: 1.96 to 1.98 g/L. Handbook values.
    CHECK(within(in(carbon_dioxide_concentration(2.5 * volume_of_co2), gram_per_liter), 4.92, 0.03));
    CHECK(within(carbonation_of(4.91 * gram_per_liter).value(), 2.5, 0.001));
}

TEST_CASE("pressure and carbonation undo each other") {
    for (const double degrees : {0.0, 10.0, 30.0}) {
        CAPTURE(degrees);
        const GaugePressure pressure = equilibrium_pressure(2.6 * volume_of_co2, celsius(degrees));
        CHECK(within(carbonation_at_equilibrium(pressure, celsius(degrees)).value(), 2.6, 1e-9));
        const GaugePressure physical = physical_equilibrium_pressure(2.6 * volume_of_co2, celsius(degrees));
        CHECK(
            within(carbonation_of(dissolved_carbon_dioxide(physical, celsius(degrees))).value(), 2.6, 1e-9));
    }
}

TEST_CASE("a bottle at room temperature bears two bar and more") {
    // 2.5 volumes at 21 °C ask for about 30 psi. Common practice.
    CHECK(within(in(bottle_pressure(2.5 * volume_of_co2, celsius(21.0)), pound_per_square_inch), 31.0, 2.5));
    // Weizen bottles of 3.8 volumes in a hot car pass 6 bar. Common practice.
    CHECK(in(bottle_pressure(3.8 * volume_of_co2, celsius(38.0)), bar) > 6.0);
}

TEST_CASE("the bottle is never reckoned below the keg's form") {
    for (const double volumes : {2.5, 3.0, 4.0}) {
        for (const double degrees : {20.0, 30.0, 40.0}) {
            CAPTURE(volumes);
            CAPTURE(degrees);
            CHECK(bottle_pressure(volumes * volume_of_co2, celsius(degrees)) >
                  keg_pressure(volumes * volume_of_co2, celsius(degrees)));
        }
    }
}

TEST_CASE("what fermentation leaves") {
    // Priming tables of the trade (Hibberd; Draper).
    for (const published::ResidualCarbonation& row : published::residual_carbonations) {
        CAPTURE(row.celsius);
        CHECK(within(residual_carbonation(celsius(row.celsius)).value(), row.volumes, 0.03));
    }
}

TEST_CASE("sugar gives the gas that its equation says") {
    // Molar masses: carbon dioxide 44.01, glucose 180.16, its monohydrate 198.17, sucrose 342.30 g/mol.
    CHECK(within(carbon_dioxide_yield(PrimingSugar::glucose).value(), 2.0 * 44.01 / 180.16, 0.0003));
    CHECK(within(carbon_dioxide_yield(PrimingSugar::glucose_monohydrate).value(), 2.0 * 44.01 / 198.17,
                 0.0003));
    CHECK(within(carbon_dioxide_yield(PrimingSugar::sucrose).value(), 4.0 * 44.01 / 342.30, 0.0003));
    CHECK(within(carbon_dioxide_yield_of_extract().value(), 0.4629, 0.0001));
}

TEST_CASE("four grams of sugar a liter give about a volume") {
    // Common practice.
    const Mass sugar =
        priming_sugar(PrimingSugar::sucrose, 1.0 * liter, 0.9 * volume_of_co2, 1.9 * volume_of_co2);
    CHECK(within(in(sugar, gram), 4.0, 0.25));
    CHECK(priming_sugar(PrimingSugar::sucrose, 1.0 * liter, 2.0 * volume_of_co2, 1.5 * volume_of_co2) ==
          Mass());
}

// A bottle must bear the higher of two estimates (common practice of safety).
TEST_CASE("the pressure in a bottle is told as the higher of two formulas") {
    for (double degrees = 0.0; degrees <= 40.0; degrees += 5.0) {
        CAPTURE(degrees);
        const GaugePressure told = bottle_pressure(3.0 * volume_of_co2, celsius(degrees));
        CHECK(told >= equilibrium_pressure(3.0 * volume_of_co2, celsius(degrees)));
        CHECK(told >= physical_equilibrium_pressure(3.0 * volume_of_co2, celsius(degrees)));
    }
}
