#include "brewing/standard_observer.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("the three stimuli add up to the sums of the standard") {
    // Commission Internationale de l'Eclairage, Colorimetry, CIE 15, 2004: sums from 380 to 780 nm, from
    // memory.
    double x = 0.0;
    double y = 0.0;
    double z = 0.0;
    for (const ObserverBand& band : observer_bands) {
        x += band.x;
        y += band.y;
        z += band.z;
    }
    CHECK(within(x, 21.371524, 5e-7));
    CHECK(within(y, 21.371327, 5e-7));
    CHECK(within(z, 21.371540, 5e-7));
}

TEST_CASE("between the tens the daylight runs straight") {
    // CIE 15, 2004: D65 is known at every ten nanometers, and linear between them.
    for (std::size_t index = 1; index < observer_bands.size(); index += 2) {
        CAPTURE(observer_bands[index].nanometers);
        const double middle = 0.5 * (observer_bands[index - 1].daylight + observer_bands[index + 1].daylight);
        CHECK(within(observer_bands[index].daylight, middle, 6e-4));
    }
}

TEST_CASE("bands are five nanometers apart, and daylight is told relative to that at 560") {
    for (std::size_t index = 0; index < observer_bands.size(); ++index) {
        const ObserverBand& band = observer_bands[index];
        CHECK(band.nanometers == 380 + 5 * static_cast<int>(index));
        CHECK((band.nanometers != 560 || band.daylight == 100.0));
    }
}
