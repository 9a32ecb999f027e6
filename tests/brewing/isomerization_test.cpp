#include "brewing/isomerization.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/published/isomerization.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("alpha acids isomerize at the boil as measured") {
    // Malowicki & Shellhammer, Journal of Agricultural and Food Chemistry 53, 2005.
    using published::half_life_of_alpha_acids_minutes;
    using published::isomerization_per_minute;
    const RateConstants rates = isomerization_rates(celsius(100.0));
    const double per_minute = rates.isomerization * minute;
    CHECK(within(per_minute, isomerization_per_minute, 0.005 * isomerization_per_minute));
    CHECK(within(std::log(2.0) / per_minute, half_life_of_alpha_acids_minutes,
                 0.005 * half_life_of_alpha_acids_minutes));
    CHECK(within(isomerization(30.0 * minute, rates).alpha_to_iso, published::isomerized_in_half_an_hour,
                 0.002));
}

TEST_CASE("the reaction needs the energy that was measured") {
    // Malowicki & Shellhammer 2005; gas constant 8.314 J/(mol K).
    const RateConstants cold = isomerization_rates(celsius(90.0));
    const RateConstants hot = isomerization_rates(celsius(130.0));
    const double inverse_span = 1.0 / 363.15 - 1.0 / 403.15;
    CHECK(within(8.314e-3 * std::log(hot.isomerization / cold.isomerization) / inverse_span,
                 published::energy_of_isomerization, 0.1));
    CHECK(within(8.314e-3 * std::log(hot.degradation / cold.degradation) / inverse_span,
                 published::energy_of_degradation, 0.1));
}

TEST_CASE("at 95 degrees the rate is about two thirds") {
    // Common practice for brewing at 1500 m.
    CHECK(within(
        isomerization_rates(celsius(95.0)).isomerization / isomerization_rates(celsius(100.0)).isomerization,
        0.66, 0.03));
}

TEST_CASE("the closed form is what small steps add up to") {
    const RateConstants rates = isomerization_rates(celsius(100.0));
    const double isomerization_per_step = rates.isomerization * (0.001 * minute);
    const double degradation_per_step = rates.degradation * (0.001 * minute);
    double alpha = 1.0;
    double iso = 0.0;
    for (int step = 0; step < 90000; ++step) {
        iso += isomerization_per_step * alpha - degradation_per_step * iso;
        alpha -= isomerization_per_step * alpha;
    }
    const Isomerization exact = isomerization(90.0 * minute, rates);
    CHECK(within(exact.alpha_left, alpha, 1e-4));
    CHECK(within(exact.alpha_to_iso, iso, 1e-4));
}

TEST_CASE("two times in turn are one time of both") {
    const RateConstants rates = isomerization_rates(celsius(92.0));
    const Isomerization whole_time = isomerization(50.0 * minute, rates);
    const Isomerization in_turn =
        isomerization(20.0 * minute, rates).then(isomerization(30.0 * minute, rates));
    CHECK(within(in_turn.alpha_left, whole_time.alpha_left, 1e-12));
    CHECK(within(in_turn.alpha_to_iso, whole_time.alpha_to_iso, 1e-12));
    CHECK(within(in_turn.iso_left, whole_time.iso_left, 1e-12));
}

TEST_CASE("equal rates are no trouble") {
    const Rate rate = 0.01 / minute;
    // The limit of the closed form at equal rates: k t exp(-k t), here exp(-1).
    CHECK(within(isomerization(100.0 * minute, {rate, rate}).alpha_to_iso, 0.367879, 1e-6));
    CHECK(within(isomerization(100.0 * minute, {rate, rate * (1.0 + 1e-6)}).alpha_to_iso, 0.367879, 1e-6));
}

TEST_CASE("acids of both kinds go through together") {
    const HopAcids before{100.0 * milligram_per_liter, 50.0 * milligram_per_liter};
    const HopAcids after = Isomerization{0.6, 0.3, 0.9}.applied_to(before);
    CHECK(within(in(after.alpha, milligram_per_liter), 60.0, 1e-9));
    CHECK(within(in(after.iso_alpha, milligram_per_liter), 75.0, 1e-9));
}
