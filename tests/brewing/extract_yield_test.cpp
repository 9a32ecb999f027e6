#include "brewing/extract_yield.hpp"

#include <doctest/doctest.h>

#include "quantity/plato.hpp"
#include "tests/published/extract.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

/// Liters times degrees of gravity, as maltsters state the extract of a kilogram.
double liter_degrees(Mass extract, Volume volume) {
    return (gravity_of_extract(extract, volume).value() - 1.0) * 1e3 * in(volume, liter);
}

}  // namespace

TEST_CASE("gravity and degrees Plato agree with the sugar tables") {
    // Bates et al., NBS Circular C440, 1942.
    using published::strong_wort;
    using published::usual_wort;
    using published::weak_wort;
    CHECK(within(extract_of(weak_wort.gravity * specific_gravity).value(), weak_wort.plato, 0.01));
    CHECK(within(specific_gravity_of(usual_wort.plato * plato).value(), usual_wort.gravity, 0.0001));
    CHECK(within(extract_of(strong_wort.gravity * specific_gravity).value(), strong_wort.plato, 0.02));
}

TEST_CASE("gravity of sugar dissolved in a volume is that of the sugar tables") {
    // Bates et al., NBS Circular C440, 1942, from memory.
    for (const published::SucroseInLiter& row : published::sucrose_in_liter) {
        CAPTURE(row.grams);
        CHECK(within(gravity_of_extract(row.grams * gram, 1.0 * liter).value(), row.gravity, 0.0002));
    }
}

TEST_CASE("extract mass and gravity of extract undo each other") {
    for (const double gravity : {1.000, 1.020, 1.050, 1.100, 1.170}) {
        CAPTURE(gravity);
        const Mass extract = extract_mass(20.0 * liter, gravity * specific_gravity);
        CHECK(within(gravity_of_extract(extract, 20.0 * liter).value(), gravity, 1e-8));
    }
}

TEST_CASE("a kilogram gives the liter degrees of the trade") {
    // Sucrose: 46.2 points in a US gallon from a pound, that is 385 liter degrees. Common practice.
    CHECK(within(liter_degrees(1.0 * kilogram, 9.63 * liter), 385.0, 1.0));
    // Pale ale malt on British certificates: 305. Common practice.
    const Mass of_malt = extract_yield(1.0 * kilogram, 81.5 * percent, 3.5 * percent, 1.0 * whole);
    CHECK(within(liter_degrees(of_malt, 7.5 * liter), 305.0, 6.0));
}

TEST_CASE("boiling leaves the extract and nearly leaves the points") {
    // Points are additive to 0.0003 within 1.030..1.100. Common practice.
    const Mass extract = extract_mass(26.0 * liter, 1.040 * specific_gravity);
    CHECK(within(gravity_of_extract(extract, 20.0 * liter).value(), 1.0 + 0.040 * 26.0 / 20.0, 0.0003));
}

TEST_CASE("efficiency and moisture lower the yield in proportion") {
    const Mass dry = extract_yield(4.0 * kilogram, 80.0 * percent, 0.0 * percent, 100.0 * percent);
    CHECK(within(in(dry, kilogram), 3.2, 1e-12));
    const Mass usual = extract_yield(4.0 * kilogram, 80.0 * percent, 5.0 * percent, 75.0 * percent);
    CHECK(within(in(usual, kilogram), 2.28, 1e-12));
}
