#include "quantity/estimate.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace entrywise;

namespace {

/// The whole numbers from 0 to 99 in an order that is not sorted: 37 and 100 have no common divisor.
Estimate<double> shuffled_hundred() {
    std::vector<double> draws;
    for (int index = 0; index < 100; ++index) {
        draws.push_back(index * 37 % 100);
    }
    return Estimate<double>(std::move(draws));
}

}  // namespace

TEST_CASE("median and interval are values of the draws, whatever their order") {
    const auto interval = shuffled_hundred().interval();
    CHECK(interval.median == 50);
    CHECK(interval.low == 10);
    CHECK(interval.high == 89);
    CHECK(shuffled_hundred().median() == 50);
}

TEST_CASE("eight in ten draws lie in the interval") {
    const Estimate<double> estimate = shuffled_hundred();
    const auto interval = estimate.interval();
    CHECK(estimate.chance([&](int value) { return value >= interval.low && value <= interval.high; }) == 0.8);
}

TEST_CASE("the estimate of a single draw is that draw") {
    const Estimate<double> estimate({1.05});
    CHECK(estimate.median() == 1.05);
    CHECK(estimate.interval().low == 1.05);
    CHECK(estimate.interval().high == 1.05);
    CHECK(estimate.chance([](double value) { return value > 1.0; }) == 1.0);
}

TEST_CASE("the median of an odd count is the one in the middle") {
    CHECK(Estimate<double>({9, 1, 5}).median() == 5);
    CHECK(Estimate<double>({9, 1, 5}).interval().median == 5);
}

TEST_CASE("the chance of a condition is the share of draws for which it holds") {
    const Estimate<double> estimate({1, 2, 3, 4});
    CHECK(estimate.chance([](int value) { return value > 1; }) == 0.75);
    CHECK(estimate.chance([](int value) { return value > 4; }) == 0.0);
}

TEST_CASE("a lifted function keeps draws of the same index together") {
    const Estimate<double> first({1, 2, 3});
    const Estimate<double> second({30, 20, 10});
    const auto sum = lift([](int left, int right) { return left + right; }, first, second);
    CHECK(sum.draws() == std::vector<int>{31, 22, 13});
    const auto difference = lift([](int left, int right) { return left - right; }, first, first);
    CHECK(difference.chance([](int value) { return value == 0; }) == 1.0);
}

TEST_CASE("a lifted function may change the kind of value") {
    const auto words = lift([](int value) { return std::to_string(value); }, Estimate<double>({7, 8}));
    CHECK(words.draws() == std::vector<std::string>{"7", "8"});
}
