#include "brewing/balling.hpp"

#include <doctest/doctest.h>

#include "quantity/plato.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("the mean of 221 analyzed beers") {
    // Cutaia, Reid & Speers, Original, real and apparent extracts and alcohol, Journal of the Institute of
    // Brewing 115, 2009.
    const Extract original = 11.34 * plato;
    const Extract real = real_extract(original, 2.01 * plato);
    CHECK(within(real.value(), 3.80, 0.05));
    CHECK(within(alcohol_by_weight(original, real) / percent, 3.82, 0.10));
}

TEST_CASE("real over apparent degree of fermentation is that of 532 beers") {
    // Cutaia, Reid & Speers 2009: 0.814 + 0.000862 times the original extract, standard error 0.0048. Rows at
    // the mean apparent attenuation of their beers, 82 %.
    struct Row {
        double original;
        double apparent;
        double ratio;
    };
    for (const Row row : {Row{11.0, 1.98, 0.8235}, Row{12.0, 2.16, 0.8243}, Row{14.0, 2.52, 0.8261},
                          Row{16.0, 2.88, 0.8278}, Row{18.0, 3.24, 0.8295}}) {
        CAPTURE(row.original);
        const Extract original = row.original * plato;
        const Extract apparent = row.apparent * plato;
        const Attenuation real = real_degree_of_fermentation(original, real_extract(original, apparent));
        CHECK(within(real / apparent_attenuation(original, apparent), row.ratio, 0.0048));
    }
}

TEST_CASE("real extract of a usual beer by Balling's pair of factors") {
    // 0.1886 and 0.8114 at 12.4 °P; Balling, Die Bierbrauerei, 1865, by way of Cutaia, Reid & Speers 2009.
    // Good to 0.06 °P.
    CHECK(within(real_extract(12.4 * plato, 2.5 * plato).value(), 0.1886 * 12.4 + 0.8114 * 2.5, 0.005));
    CHECK(within(real_extract(16.0 * plato, 4.0 * plato).value(), 0.1886 * 16.0 + 0.8114 * 4.0, 0.06));
}

TEST_CASE("alcohol by volume of a usual beer") {
    // 1.050 to 1.010 by the exact balance. Balling 1865, by way of Cutaia, Reid & Speers 2009.
    CHECK(within(alcohol_by_volume(1.050 * specific_gravity, 1.010 * specific_gravity).value(), 5.27, 0.02));
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
