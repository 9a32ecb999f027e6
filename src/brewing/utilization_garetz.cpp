#include "brewing/utilization_garetz.hpp"

#include <array>
#include <cmath>

#include "base/piecewise.hpp"
#include "brewing/bitterness_of_utilization.hpp"

namespace entrywise {

namespace {

/// Percent used, by minutes of boil.
constexpr std::array<Corner, 13> table = {{{10.0, 0.0},
                                           {15.0, 2.0},
                                           {20.0, 5.0},
                                           {25.0, 8.0},
                                           {30.0, 11.0},
                                           {35.0, 14.0},
                                           {40.0, 16.0},
                                           {45.0, 18.0},
                                           {50.0, 19.0},
                                           {60.0, 20.0},
                                           {70.0, 21.0},
                                           {80.0, 22.0},
                                           {90.0, 23.0}}};

}  // namespace

Share garetz_utilization(Duration boil) {
    return on_line_through(table, in(boil, minute)) * percent;
}

Bitterness garetz_bitterness(Concentration alpha_acids, Duration boil, const GaretzBrew& brew) {
    constexpr double meters_per_foot = 0.3048;
    const double feet = brew.altitude.value() / meters_per_foot;
    const double gravity_factor = 1.0 + (brew.boil_gravity.value() - 1.050) / 0.2;
    const double temperature_factor = 1.0 + 0.02 * feet / 550.0;
    const double unhindered = bitterness_of_utilization(alpha_acids, garetz_utilization(boil)).value() /
                              (gravity_factor * temperature_factor);
    // The hopping-rate factor is 1 + slope * bitterness.
    const double slope = brew.final_over_boil_volume.value() / 260.0;
    return (std::sqrt(1.0 + 4.0 * slope * unhindered) - 1.0) / (2.0 * slope) * ibu;
}

}  // namespace entrywise
