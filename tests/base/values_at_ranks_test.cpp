#include "base/values_at_ranks.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <vector>

using namespace entrywise;

namespace {

/// Whether every rank has the value that the sort of the standard library puts there.
bool is_as_sorted(const std::vector<double>& values) {
    std::vector<double> sorted = values;
    std::sort(sorted.begin(), sorted.end());
    for (std::size_t rank = 0; rank < values.size(); ++rank) {
        if (values_at_ranks<1>(values, {rank}).front() != sorted[rank]) {
            return false;
        }
    }
    return true;
}

std::vector<double> made(std::size_t count, auto draw) {
    std::vector<double> values(count);
    std::generate(values.begin(), values.end(), draw);
    return values;
}

}  // namespace

TEST_CASE("values at ranks are those of a sort, however the values lie") {
    std::mt19937_64 dice(2026);
    std::normal_distribution<double> normal;
    std::lognormal_distribution<double> skewed(0.0, 3.0);
    std::uniform_int_distribution<int> coin(0, 1);
    for (const std::size_t count : {1U, 2U, 3U, 47U, 48U, 49U, 64U, 511U, 512U, 513U, 1000U}) {
        CAPTURE(count);
        CHECK(is_as_sorted(made(count, [&] { return normal(dice); })));
        CHECK(is_as_sorted(made(count, [&] { return skewed(dice); })));
        CHECK(is_as_sorted(made(count, [&] { return static_cast<double>(coin(dice)); })));
        CHECK(is_as_sorted(made(count, [] { return -2.5; })));
        CHECK(is_as_sorted(made(count, [&, next = 0.0]() mutable { return next -= 1.0; })));
    }
}

TEST_CASE("values at ranks are those of a sort at the ends of what a number can be") {
    std::mt19937_64 dice(2027);
    std::uniform_real_distribution<double> even(-1.0, 1.0);
    constexpr double greatest = std::numeric_limits<double>::max();
    constexpr double least = std::numeric_limits<double>::denorm_min();
    CHECK(is_as_sorted(made(300, [&] { return greatest * even(dice); })));
    CHECK(is_as_sorted(made(300, [&] { return std::floor(5.0 * even(dice)) * least; })));
    CHECK(is_as_sorted(made(300, [&] { return 1.0 + std::floor(5.0 * even(dice)) * 2.3e-16; })));
    std::vector<double> one_far_away = made(300, [&] { return even(dice); });
    one_far_away.back() = 1e300;
    CHECK(is_as_sorted(one_far_away));
}

TEST_CASE("several ranks are found at once") {
    const std::vector<double> values = made(100, [next = 100.0]() mutable { return --next; });
    CHECK(values_at_ranks<3>(values, {10, 50, 89}) == std::array{10.0, 50.0, 89.0});
}
