#include "brewing/wort_cooling.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

constexpr Area square_centimeter = Area::from_value(1e-4);

/// 20 L in an open pot of 36 cm across.
Rate usual_cooling() {
    const Area surface = 1018.0 * square_centimeter;
    return natural_cooling_rate(surface, surface, 20.0 * liter);
}

}  // namespace

TEST_CASE("an open pot of 20 L cools as home brewers find it") {
    // Near 90 °C after ten minutes and 80 °C after half an hour or so. Common practice.
    CHECK(within(in_celsius(naturally_cooled(0.0 * minute, usual_cooling())), 100.0, 0.2));
    CHECK(within(in_celsius(naturally_cooled(10.0 * minute, usual_cooling())), 90.0, 2.5));
    CHECK(within(in_celsius(naturally_cooled(30.0 * minute, usual_cooling())), 77.0, 4.0));
}

TEST_CASE("a lid and a large volume keep wort hot") {
    const Area surface = 1000.0 * square_centimeter;
    const Rate open = natural_cooling_rate(surface, surface, 20.0 * liter);
    CHECK(natural_cooling_rate(surface, 10.0 * square_centimeter, 20.0 * liter) < open);
    CHECK(natural_cooling_rate(surface, surface, 40.0 * liter) < open);
}

TEST_CASE("the steps take as long as the cooling does") {
    const std::vector<TemperatureStep> steps =
        natural_cooling_steps(celsius(100.0), celsius(65.0), usual_cooling());
    Duration elapsed;
    for (const TemperatureStep& step : steps) {
        const Temperature in_the_middle = naturally_cooled(elapsed + 0.5 * step.time, usual_cooling());
        CHECK(within(in_celsius(step.temperature), in_celsius(in_the_middle), 0.2));
        elapsed += step.time;
    }
    CHECK(within(in_celsius(naturally_cooled(elapsed, usual_cooling())), 65.0, 0.1));
}

TEST_CASE("hop acids cannot tell the steps from a smooth fall") {
    Isomerization by_steps;
    Duration elapsed;
    for (const TemperatureStep& step :
         natural_cooling_steps(celsius(100.0), celsius(65.0), usual_cooling())) {
        by_steps = by_steps.then(isomerization(step.time, isomerization_rates(step.temperature)));
        elapsed += step.time;
    }
    Isomerization smoothly;
    const int pieces = 20000;
    const Duration piece = elapsed / static_cast<double>(pieces);
    for (int index = 0; index < pieces; ++index) {
        const Temperature temperature = naturally_cooled((index + 0.5) * piece, usual_cooling());
        smoothly = smoothly.then(isomerization(piece, isomerization_rates(temperature)));
    }
    CHECK(within(by_steps.alpha_to_iso / smoothly.alpha_to_iso, 1.0, 0.01));
}

TEST_CASE("cooling upwards takes no steps, and out of range ends") {
    CHECK(natural_cooling_steps(celsius(60.0), celsius(65.0), usual_cooling()).empty());
    CHECK(natural_cooling_steps(celsius(65.0), celsius(65.0), usual_cooling()).empty());
    const std::vector<TemperatureStep> widest =
        natural_cooling_steps(celsius(120.0), celsius(10.0), usual_cooling());
    CHECK(!widest.empty());
    CHECK(std::all_of(widest.begin(), widest.end(), [](const TemperatureStep& step) {
        return step.time > 0.0 * minute && step.time < 1000.0 * minute;
    }));
}

TEST_CASE("a short fall takes its part of a long one") {
    const auto time = [](double from, double to) {
        Duration sum;
        for (const TemperatureStep& step :
             natural_cooling_steps(celsius(from), celsius(to), usual_cooling())) {
            sum += step.time;
        }
        return sum;
    };
    for (const double between : {92.7, 90.3, 90.05}) {
        CAPTURE(between);
        CHECK(time(between, 90.0) > 0.0 * minute);
        CHECK(within((time(95.0, between) + time(between, 90.0)) / time(95.0, 90.0), 1.0, 1e-9));
    }
}
