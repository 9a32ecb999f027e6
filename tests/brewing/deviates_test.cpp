#include "brewing/deviates.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <vector>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

double mean_of(const std::vector<double>& column) {
    return std::accumulate(column.begin(), column.end(), 0.0) / static_cast<double>(column.size());
}

double mean_product(const std::vector<double>& first, const std::vector<double>& second) {
    return std::inner_product(first.begin(), first.end(), second.begin(), 0.0) /
           static_cast<double>(first.size());
}

double deviation_of(const std::vector<double>& column) {
    const double mean = mean_of(column);
    return std::sqrt(mean_product(column, column) - mean * mean);
}

double correlation_of(const std::vector<double>& first, const std::vector<double>& second) {
    return (mean_product(first, second) - mean_of(first) * mean_of(second)) /
           (deviation_of(first) * deviation_of(second));
}

std::string input(std::size_t number) {
    return "input " + std::to_string(number);
}

}  // namespace

TEST_CASE("the same name gives the same column, another name another") {
    Deviates deviates(usual_draws);
    const std::vector<double> first = deviates.of("volume");
    const std::vector<double> second = deviates.of("efficiency");
    CHECK(deviates.of("volume") == first);
    CHECK(first != second);
    CHECK(first.size() == usual_draws);
}

TEST_CASE("a column keeps its place and its values when many more inputs come") {
    Deviates deviates(64);
    const std::vector<double>& early = deviates.of("volume");
    const std::vector<double> as_it_was = early;
    for (std::size_t number = 0; number < 500; ++number) {
        deviates.of(input(number));
    }
    CHECK(early == as_it_was);
    CHECK(&deviates.of("volume") == &early);
}

// Definition of the standard normal distribution.
TEST_CASE("every column has mean 0 within 0.01 and standard deviation 1 within 0.02") {
    Deviates deviates(usual_draws);
    for (std::size_t number = 0; number < 200; ++number) {
        const std::vector<double>& column = deviates.of(input(number));
        CAPTURE(number);
        CHECK(within(mean_of(column), 0.0, 0.01));
        CHECK(within(deviation_of(column), 1.0, 0.02));
    }
}

// Abramowitz and Stegun, Handbook of mathematical functions, 1964, table 26.1: of a standard normal
// variable 68.3 % lies within 1, 95.4 % within 2; the 90th percentile is 1.28155.
TEST_CASE("the draws of a column are spread as the normal distribution") {
    Deviates deviates(usual_draws);
    const auto share_within = [&](double limit) {
        const std::vector<double>& column = deviates.of("volume");
        const auto inside = std::count_if(column.begin(), column.end(),
                                          [limit](double value) { return std::abs(value) <= limit; });
        return static_cast<double>(inside) / static_cast<double>(usual_draws);
    };
    CHECK(within(share_within(1.0), 0.683, 0.005));
    CHECK(within(share_within(2.0), 0.954, 0.005));
    CHECK(within(Deviates::eight_in_ten, 1.28155, 1e-5));
    CHECK(within(share_within(Deviates::eight_in_ten), 0.8, 0.005));
}

TEST_CASE("different columns are nearly uncorrelated") {
    // As many as a large recipe names. Independent draws would scatter with 1/sqrt(512) = 0.044.
    constexpr std::size_t inputs = 60;
    Deviates deviates(usual_draws);
    double squares = 0.0;
    double largest = 0.0;
    for (std::size_t first = 0; first < inputs; ++first) {
        for (std::size_t second = 0; second < first; ++second) {
            const double correlation = correlation_of(deviates.of(input(first)), deviates.of(input(second)));
            squares += correlation * correlation;
            largest = std::max(largest, std::abs(correlation));
        }
    }
    const double pairs = 0.5 * inputs * (inputs - 1);
    MESSAGE("root mean square ", std::sqrt(squares / pairs), ", largest ", largest);
    CHECK(std::sqrt(squares / pairs) < 0.044);
    CHECK(largest < 0.25);
}

TEST_CASE("a single draw has every input at its middle") {
    Deviates middle(1);
    for (std::size_t number = 0; number < 500; ++number) {
        CHECK(middle.of(input(number)) == std::vector<double>{0.0});
    }
}

TEST_CASE("thousands of inputs each have a column of their own") {
    Deviates deviates(16);
    for (std::size_t number = 0; number < 5000; ++number) {
        const std::vector<double>& column = deviates.of(input(number));
        CHECK(column.size() == 16);
        CHECK(within(mean_of(column), 0.0, 0.2));
        CHECK(within(deviation_of(column), 1.0, 0.2));
    }
    CHECK(deviates.of(input(4500)) != deviates.of(input(4501)));
}

TEST_CASE("the same inputs named in the same order give the same draws") {
    Deviates first(256);
    Deviates second(256);
    for (std::size_t number = 0; number < 300; ++number) {
        CHECK(first.of(input(number)) == second.of(input(number)));
    }
}

TEST_CASE("eight in ten draws of a quantity lie within its half width") {
    Deviates deviates(usual_draws);
    const Estimate<Volume> volume =
        deviates.draw("volume", {20.0 * liter, 1.0 * liter}, 0.0 * liter, 40.0 * liter);
    const double share =
        volume.chance([](Volume value) { return value >= 19.0 * liter && value <= 21.0 * liter; });
    CHECK(within(share, 0.8, 0.005));
    CHECK(within(in(volume.median(), liter), 20.0, 0.01));
}

TEST_CASE("draws stay within the limits of a quantity") {
    Deviates deviates(usual_draws);
    const Estimate<Share> share =
        deviates.draw("efficiency", {95.0 * percent, 20.0 * percent}, 5.0 * percent, 100.0 * percent);
    CHECK(share.chance([](Share value) { return value < 5.0 * percent || value > 100.0 * percent; }) == 0.0);
    CHECK(share.chance([](Share value) { return value == 100.0 * percent; }) > 0.2);
}

TEST_CASE("a quantity without spread is the same in every draw") {
    Deviates deviates(64);
    const Estimate<Share> share =
        deviates.draw("extract", {80.0 * percent, 0.0 * percent}, 0.0 * percent, 100.0 * percent);
    CHECK(share.chance([](Share value) { return value == 80.0 * percent; }) == 1.0);
}
