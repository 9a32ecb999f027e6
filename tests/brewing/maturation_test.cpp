#include "brewing/maturation.hpp"

#include <doctest/doctest.h>

#include <optional>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

Maturation lager() {
    Maturation maturation;
    maturation.fermentation = Fermentation::bottom;
    return maturation;
}

double diacetyl_after_rest(double degrees, double days) {
    Maturation maturation = lager();
    maturation.on_yeast = 8.0 * day;
    maturation.rest = DiacetylRest{celsius(degrees), days * day};
    return diacetyl_change(maturation);
}

}  // namespace

TEST_CASE("a recipe that tells nothing of it has the beer of its yeast") {
    CHECK(diacetyl_change(lager()) == 0.0);
    CHECK(sulfur_factor(lager()) == 1.0);
}

// Krogerus and Gibson, Journal of the Institute of Brewing 119, 2013: diacetyl goes faster in the warm, in a
// rest of 1 to 3 days at 14 to 18 °C.
TEST_CASE("a warmer and a longer rest never leave more diacetyl, and a cold one does nothing") {
    for (double days = 1.0; days <= 4.0; days += 1.0) {
        double before = 10.0;
        for (double degrees = 8.0; degrees <= 20.0; degrees += 1.0) {
            const double change = diacetyl_after_rest(degrees, days);
            CHECK(change <= before);
            before = change;
        }
        CHECK(diacetyl_after_rest(17.0, days + 1.0) <= diacetyl_after_rest(17.0, days));
    }
    CHECK(diacetyl_after_rest(9.0, 3.0) > 1.0);
    CHECK(diacetyl_after_rest(17.0, 3.0) < 0.0);
}

TEST_CASE("an ale is done with its diacetyl in a week, a lager is not") {
    Maturation ale;
    ale.on_yeast = 7.0 * day;
    CHECK(diacetyl_change(ale) == 0.0);
    Maturation young = lager();
    young.on_yeast = 7.0 * day;
    CHECK(diacetyl_change(young) > 0.5);
}

// Common practice: sulfur fades in weeks of lagering.
TEST_CASE("sulfur fades with every week, and a lager a week old has more than one of a month") {
    double before = 10.0;
    for (double weeks = 0.0; weeks <= 12.0; weeks += 1.0) {
        Maturation maturation = lager();
        maturation.conditioned = weeks * week;
        const double left = sulfur_factor(maturation);
        CHECK(left <= before);
        before = left;
    }
    CHECK(before < 0.5);
}

// A rest is warm, and yeast works three times as fast in it as in a lager's cold (common practice;
// three times is a working value).
TEST_CASE("a day of a warm rest does what three cold days do") {
    const auto change = [](std::optional<Duration> on_yeast, std::optional<DiacetylRest> rest) {
        Maturation maturation = lager();
        maturation.on_yeast = on_yeast;
        maturation.rest = rest;
        return diacetyl_change(maturation);
    };
    const DiacetylRest a_day{celsius(18.0), 1.0 * day};
    const double taken = change(std::nullopt, a_day);
    CHECK(taken < 0.0);
    // The day of the rest is one of the nine, and stands for two more.
    CHECK(within(change(9.0 * day, a_day) - taken, change(11.0 * day, std::nullopt), 1e-9));
}

// Yeast sinks in the cold and takes up no more (common practice; that half a level and five weeks are all is
// a working value).
TEST_CASE("lagering takes half a level of diacetyl in five weeks, and nothing after") {
    const auto change = [](double weeks) {
        Maturation maturation = lager();
        maturation.cold_weeks = weeks;
        return diacetyl_change(maturation);
    };
    CHECK(within(change(5.0), -0.5, 1e-9));
    CHECK(change(12.0) == change(5.0));
    CHECK(change(4.0) > change(5.0));
}

// Working value: a lager straight from the fermenter has three fifths more than one that was lagered.
TEST_CASE("no beer is so young that it has twice the sulfur of its yeast") {
    Maturation maturation = lager();
    maturation.conditioned = 0.0 * week;
    CHECK(sulfur_factor(maturation) > 1.4);
    CHECK(sulfur_factor(maturation) < 1.8);
}

// Working value: a level of diacetyl is the least that is told, and a rest alone takes three fifths of one.
TEST_CASE("a rest of any length takes three fifths of a level of diacetyl at most") {
    Maturation maturation = lager();
    maturation.rest = DiacetylRest{celsius(20.0), 30.0 * day};
    CHECK(within(diacetyl_change(maturation), -0.6, 0.05));
}
