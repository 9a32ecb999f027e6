#include "brewing/lauter_efficiency.hpp"

#include <doctest/doctest.h>

#include <array>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("two runnings win what batch sparging of a usual grist wins") {
    // 5 kg for 26 L in the kettle, sparged once: 90 % or a little more. Common practice.
    const std::array run_offs = {13.0 * liter, 13.0 * liter};
    CHECK(within(lauter_efficiency(5.0 * kilogram, run_offs).value(), 0.91, 0.02));
}

TEST_CASE("no sparge wins less, and a big grist less still") {
    // Same grist without sparge: 80..85 %. Common practice.
    const std::array one_run_off = {26.0 * liter};
    const Share without_sparge = lauter_efficiency(5.0 * kilogram, one_run_off);
    CHECK(within(without_sparge.value(), 0.83, 0.03));
    CHECK(lauter_efficiency(10.0 * kilogram, one_run_off) < without_sparge);
}

TEST_CASE("equal runnings win most") {
    const std::array equal = {13.0 * liter, 13.0 * liter};
    const std::array unequal = {20.0 * liter, 6.0 * liter};
    CHECK(lauter_efficiency(5.0 * kilogram, equal) > lauter_efficiency(5.0 * kilogram, unequal));
}

TEST_CASE("nothing run off wins nothing") {
    CHECK(lauter_efficiency(5.0 * kilogram, {}).value() == 0.0);
}
