#include "brewing/alcohol_regressions.hpp"

#include <doctest/doctest.h>

#include "brewing/balling.hpp"
#include "quantity/plato.hpp"
#include "tests/published/balance.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("the regression gives the mean alcohol of its beers") {
    // Cutaia, Reid & Speers, Journal of the Institute of Brewing 115, 2009: means of 221 beers.
    const published::AnalyzedBeer& beer = published::mean_of_221_beers;
    const Share alcohol = alcohol_by_regression(beer.original_extract * plato, beer.apparent_extract * plato);
    CHECK(within(alcohol / percent, beer.alcohol, 0.10));
}

TEST_CASE("the second-degree form equals the exact balance") {
    // De Lange, web article on alcohol and attenuation: within 0.1 %.
    for (const double original : {10.0, 12.0, 16.0, 20.0}) {
        CAPTURE(original);
        const Extract apparent = 0.2 * original * plato;
        const Share exact = alcohol_by_weight(original * plato, real_extract(original * plato, apparent));
        CHECK(within(alcohol_by_de_lange(original * plato, apparent) / exact, 1.0, 0.0015));
    }
}

TEST_CASE("the straight line is near to 1.060 and low above") {
    // Common practice: within 0.05 % of the exact balance to 1.060.
    const auto error = [](double original, double final) {
        const SpecificGravity from = original * specific_gravity;
        const SpecificGravity to = final * specific_gravity;
        return (alcohol_by_gravity_fall(from, to) - alcohol_by_volume(from, to)).value();
    };
    CHECK(within(error(1.040, 1.010), 0.0, 0.05));
    CHECK(within(error(1.060, 1.015), 0.0, 0.05));
    CHECK(error(1.100, 1.025) < -0.1);
}

TEST_CASE("Hall's form reads high, the more the stronger") {
    // Hall, Brew by the numbers, Zymurgy, 1995, against the exact balance: near in ordinary beer.
    const auto ratio = [](double original, double final) {
        const SpecificGravity from = original * specific_gravity;
        const SpecificGravity to = final * specific_gravity;
        return alcohol_by_hall(from, to) / alcohol_by_volume(from, to);
    };
    CHECK(within(ratio(1.050, 1.0125), 1.01, 0.01));
    CHECK(ratio(1.070, 1.0175) > ratio(1.050, 1.0125));
    CHECK(ratio(1.100, 1.025) > 1.05);
}
