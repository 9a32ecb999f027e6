#include "brewing/wort_cooling.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

// The wort tends to `floor` and starts `height` above it.
constexpr double floor_degrees = 46.4;
constexpr double height_degrees = 53.7;

}  // namespace

Rate natural_cooling_rate(Area surface, Area opening, Volume volume) {
    const double square_centimeters = std::sqrt(surface.value() * opening.value()) * 1e4;
    return (0.0002925 * square_centimeters / in(volume, liter) + 0.00538) / minute;
}

Temperature naturally_cooled(Duration since_flame_out, Rate cooling) {
    const double elapsed = since_flame_out * cooling;
    return celsius(floor_degrees + height_degrees * std::exp(-elapsed));
}

std::vector<TemperatureStep> natural_cooling_steps(Temperature from, Temperature to, Rate cooling) {
    constexpr double widest_fall = 2.0;
    const double start = std::min(in_celsius(from), floor_degrees + height_degrees);
    const double end = std::max(in_celsius(to), 47.0);
    std::vector<TemperatureStep> steps;
    if (start <= end) {
        return steps;
    }
    const double count = std::ceil((start - end) / widest_fall);
    const double fall = (start - end) / count;
    for (double upper = start; upper > end + 0.5 * fall; upper -= fall) {
        const double relative_fall = fall / (upper - floor_degrees);
        steps.push_back({-std::log1p(-relative_fall) / cooling, celsius(upper - 0.5 * fall)});
    }
    return steps;
}

}  // namespace entrywise
