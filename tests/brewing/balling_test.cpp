#include "brewing/balling.hpp"

#include <doctest/doctest.h>

#include "quantity/plato.hpp"
#include "tests/published/balance.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("the mean of 221 analyzed beers") {
    // Cutaia, Reid & Speers, Journal of the Institute of Brewing 115, 2009.
    const published::AnalyzedBeer& beer = published::mean_of_221_beers;
    const Extract original = beer.original_extract * plato;
    const Extract real = real_extract(original, beer.apparent_extract * plato);
    CHECK(within(real.value(), beer.real_extract, 0.05));
    CHECK(within(alcohol_by_weight(original, real) / percent, beer.alcohol, 0.10));
}

TEST_CASE("real over apparent degree of fermentation is that of 532 beers") {
    // Cutaia, Reid & Speers 2009, within their standard error.
    for (const published::FermentationRatio& row : published::fermentation_ratios) {
        CAPTURE(row.original_extract);
        const Extract original = row.original_extract * plato;
        const Extract apparent = row.apparent_extract * plato;
        const Attenuation real = real_degree_of_fermentation(original, real_extract(original, apparent));
        CHECK(within(real / apparent_attenuation(original, apparent), row.ratio,
                     published::fermentation_ratio_error));
    }
}

TEST_CASE("real extract of a usual beer by Balling's pair of factors") {
    // Exact at 12.4 °P; Balling, Die Bierbrauerei, 1865, by way of Cutaia, Reid & Speers 2009. Good to 0.06
    // °P.
    const auto by_the_pair = [](double original, double apparent) {
        return published::part_of_original_extract * original +
               published::part_of_apparent_extract * apparent;
    };
    CHECK(within(real_extract(12.4 * plato, 2.5 * plato).value(), by_the_pair(12.4, 2.5), 0.005));
    CHECK(within(real_extract(16.0 * plato, 4.0 * plato).value(), by_the_pair(16.0, 4.0), 0.06));
}

TEST_CASE("alcohol by volume of a usual beer") {
    // The exact balance. Balling 1865, by way of Cutaia, Reid & Speers 2009.
    const published::BeerByGravities& beer = published::usual_beer;
    CHECK(within(
        alcohol_by_volume(beer.original_gravity * specific_gravity, beer.final_gravity * specific_gravity)
            .value(),
        beer.alcohol, 0.02));
}

TEST_CASE("sugar that ferments whole is 1.23 attenuated as a hydrometer shows it") {
    // Common practice: the hydrometer of a sugar wash ends below the zero of its scale.
    const Extract original = 12.4 * plato;
    const Extract apparent = apparent_extract(original, 0.0 * plato);
    CHECK(within(apparent_attenuation(original, apparent).value(), 1.23, 0.005));
    CHECK(specific_gravity_of(apparent).value() < 1.0);
}

TEST_CASE("the balance closes") {
    for (const double original : {6.0, 12.0, 18.0, 26.0}) {
        for (const double apparent : {-1.0, 1.0, 3.0, 5.0}) {
            CAPTURE(original);
            CAPTURE(apparent);
            const Extract real = real_extract(original * plato, apparent * plato);
            CHECK(within(apparent_extract(original * plato, real).value(), apparent, 1e-12));
            const Share alcohol = alcohol_by_weight(original * plato, real);
            CHECK(within(original_extract(alcohol, real).value(), original, 1e-9));
            const Attenuation attenuation = real_attenuation(original * plato, real);
            CHECK(within(real_extract_after(original * plato, attenuation).value(), real.value(), 1e-12));
        }
    }
}

TEST_CASE("unfermented wort holds no alcohol") {
    CHECK(within(alcohol_by_volume(1.050 * specific_gravity, 1.050 * specific_gravity).value(), 0.0, 1e-9));
}
