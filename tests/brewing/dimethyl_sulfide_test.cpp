#include "brewing/dimethyl_sulfide.hpp"

#include <doctest/doctest.h>

#include <array>

#include "tests/published/dimethyl_sulfide.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

double half_life_as_in(const published::PrecursorHalfLife& row) {
    return in(precursor_half_life(row.ph, celsius(row.celsius)), minute);
}

}  // namespace

TEST_CASE("the precursor breaks down at the boil as measured") {
    // Dickenson, DMS precursor, Journal of the Institute of Brewing 85, 1979; Wilson & Booer, same volume.
    for (const published::PrecursorHalfLife& row : published::precursor_at_the_boil) {
        CHECK(within(half_life_as_in(row), row.minutes, 0.1));
    }
    CHECK(
        within(half_life_as_in(published::precursor_by_wilson), published::precursor_by_wilson.minutes, 1.0));
    CHECK(within(precursor_left(60.0 * minute, 5.2, celsius(100.0)).value(),
                 published::precursor_left_by_the_boil, 0.01));
}

TEST_CASE("it keeps twice as long at 94 degrees") {
    // Dickenson 1979.
    const published::PrecursorHalfLife& row = published::precursor_below_the_boil;
    CHECK(within(half_life_as_in(row), row.minutes, 0.5));
}

TEST_CASE("a long hot stand frees what a short one does not") {
    // Half an hour at 94 °C: 30 of 76 min of half-life free about a quarter. Dickenson 1979.
    const Concentration precursor = 0.2 * milligram_per_liter;
    const std::array hot = {TemperatureStep{30.0 * minute, celsius(94.0)}};
    CHECK(within(dimethyl_sulfide_formed(precursor, hot, 5.2) / precursor,
                 published::precursor_freed_by_a_stand, 0.01));
    const std::array cool = {TemperatureStep{30.0 * minute, celsius(70.0)}};
    CHECK(dimethyl_sulfide_formed(precursor, cool, 5.2) < 0.03 * precursor);
    CHECK(dimethyl_sulfide_formed(precursor, {}, 5.2) == Concentration());
}

TEST_CASE("what is formed was precursor before") {
    const Concentration precursor = 0.2 * milligram_per_liter;
    const std::array steps = {TemperatureStep{20.0 * minute, celsius(95.0)}};
    const Concentration left = precursor_left(20.0 * minute, 5.3, celsius(95.0)).value() * precursor;
    CHECK(within(in(dimethyl_sulfide_formed(precursor, steps, 5.3) + left, precursor), 1.0, 1e-9));
}
