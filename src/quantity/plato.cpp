#include "quantity/plato.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

// Lincoln, Parametric equations for brewing computations, MBAA Technical Quarterly 24, 1987.
constexpr double cubic = 182.46007;
constexpr double square = -775.68212;
constexpr double linear = 1262.7794;
constexpr double constant = -669.56218;

double degrees_at(double gravity) {
    return ((cubic * gravity + square) * gravity + linear) * gravity + constant;
}

double slope_at(double gravity) {
    return (3.0 * cubic * gravity + 2.0 * square) * gravity + linear;
}

}  // namespace

Extract extract_of(SpecificGravity gravity) {
    return Extract::from_value(degrees_at(gravity.value()));
}

SpecificGravity specific_gravity_of(Extract extract) {
    // The slope is positive everywhere, so that Newton's steps from this common rule of thumb settle within
    // three: after one of less than a billionth the next would be smaller than a double can tell.
    constexpr int most_steps = 20;
    constexpr double settled = 1e-9;
    constexpr double beyond_all_worts = 100.0;
    const double degrees = extract.value();
    double gravity = 1.0 + degrees / (258.6 - 0.8796 * std::min(degrees, beyond_all_worts));
    for (int step = 0; step < most_steps; ++step) {
        const double correction = (degrees - degrees_at(gravity)) / slope_at(gravity);
        gravity += correction;
        if (std::abs(correction) < settled) {
            break;
        }
    }
    return SpecificGravity::from_value(gravity);
}

}  // namespace entrywise
