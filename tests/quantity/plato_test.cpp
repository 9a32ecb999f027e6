#include "quantity/plato.hpp"

#include <doctest/doctest.h>

#include "tests/published/extract.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {
double plato_at(double gravity) {
    return extract_of(gravity * specific_gravity).value();
}
double gravity_at(double degrees) {
    return specific_gravity_of(degrees * plato).value();
}
}  // namespace

TEST_CASE("extract agrees with the sucrose table of the National Bureau of Standards") {
    // Bates et al., NBS Circular C440, 1942. The cubic is fitted to it with an error of 0.0009 °P, three of
    // which are allowed.
    constexpr double three_errors = 0.0027;
    for (const published::SucroseSolution& solution : published::sucrose_solutions) {
        CAPTURE(solution.plato);
        CHECK(within(plato_at(solution.gravity), solution.plato, three_errors));
        CHECK(within(gravity_at(solution.plato), solution.gravity, 1e-5));
    }
}

TEST_CASE("extract agrees with values of everyday use") {
    // Common practice: 1.040 is about 10 °P, 12 °P about 1.048, 1.100 about 23.8 °P.
    CHECK(within(plato_at(1.040), 9.993, 0.01));
    CHECK(within(gravity_at(12.0), 1.0484, 0.0001));
    CHECK(within(plato_at(1.100), 23.77, 0.02));
    // Water has no extract; the cubic misses that by less than what a hydrometer tells.
    CHECK(within(plato_at(1.000), 0.0, 0.005));
}

TEST_CASE("extract and gravity are inverse to 1e-10 over the valid span") {
    for (double degrees = -3.0; degrees <= 40.0; degrees += 0.01) {
        const Extract extract = degrees * plato;
        REQUIRE(within(extract_of(specific_gravity_of(extract)).value(), degrees, 1e-10));
    }
    for (double gravity = 0.990; gravity <= 1.179; gravity += 0.0001) {
        REQUIRE(within(gravity_at(plato_at(gravity)), gravity, 1e-10));
    }
}

TEST_CASE("more gravity is more extract everywhere") {
    for (double gravity = 0.980; gravity < 1.250; gravity += 0.001) {
        REQUIRE(plato_at(gravity + 0.001) > plato_at(gravity));
    }
}
