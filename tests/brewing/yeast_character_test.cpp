#include "brewing/yeast_character.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double esters_of(const Recipe& recipe) {
    return brew_at_middle(recipe).drivers.ester.median();
}

YeastClass lactic_bacteria() {
    YeastClass yeast = american_ale();
    yeast.name = "lactic bacteria";
    yeast.ester = {};
    yeast.diacetyl = {};
    yeast.lactic = true;
    return yeast;
}

YeastClass brettanomyces() {
    YeastClass yeast = american_ale();
    yeast.name = "brettanomyces";
    yeast.attenuation.middle = 0.88 * fully_attenuated;
    yeast.brettanomyces = true;
    return yeast;
}

Recipe pitched(std::vector<YeastClass> yeasts) {
    Recipe recipe = pale_ale();
    recipe.yeasts.clear();
    for (const YeastClass& yeast : yeasts) {
        recipe.yeasts.push_back({.yeast = yeast, .attenuation_is_stated = false, .position = {}});
    }
    return recipe;
}

}  // namespace

// Ethyl acetate rises from 12.5 to 21.5 mg/L between 10 and 25 °C: Pires et al., Yeast: the soul of beer's
// aroma, Applied Microbiology and Biotechnology 98, 2014, from memory.
TEST_CASE("warmer fermentation never gives less ester") {
    double before = -1.0;
    for (double degrees = 12.0; degrees <= 32.0; degrees += 1.0) {
        const double esters = esters_of(fermented_at(degrees));
        CHECK(esters >= before);
        before = esters;
    }
    CHECK(esters_of(fermented_at(24.0)) > esters_of(fermented_at(17.0)) + 0.5);
}

TEST_CASE("the level of the class holds at the middle of its temperatures") {
    CHECK(within(esters_of(fermented_at(19.0)), 1.5, 1e-6));
}

// Working value: half the yeast is worth half a step, twice of it a little less.
// Bacteria and Brettanomyces work for months, before or after the fermentation that a recipe tells of: common
// practice.
TEST_CASE("the temperature of the fermentation says nothing of what works beside it") {
    for (YeastClass slow : {brettanomyces(), lactic_bacteria()}) {
        CAPTURE(slow.name);
        slow.ester = {5.0, 6.0};
        CHECK(within(esters_of(fermented_at(14.0, slow)), esters_of(fermented_at(24.0, slow)), 1e-6));
    }
}

TEST_CASE("half the yeast gives half a step more of esters, and twice the yeast less of them") {
    const auto level = [](double doublings) {
        return ester_level(3.0, 0.0 * kelvin, 1.050 * specific_gravity, doublings);
    };
    CHECK(within(level(-1.0), 3.5, 0.05));
    CHECK(within(level(1.0), 2.6, 0.05));
}

// Common practice: strong wort gives more esters.
TEST_CASE("strong wort never gives less ester") {
    double before = -1.0;
    for (double gravity = 1.030; gravity <= 1.140; gravity += 0.010) {
        const double level = ester_level(2.0, 0.0 * kelvin, gravity * specific_gravity);
        CHECK(level >= before);
        before = level;
    }
    CHECK(before > ester_level(2.0, 0.0 * kelvin, 1.045 * specific_gravity));
}

TEST_CASE("ester levels stay on the scale") {
    for (double usual = 0.0; usual <= 7.0; usual += 0.5) {
        for (double kelvins = -20.0; kelvins <= 30.0; kelvins += 5.0) {
            const double level = ester_level(usual, kelvins * kelvin, 1.120 * specific_gravity);
            CHECK(level >= 0.0);
            CHECK(level <= 7.0);
        }
    }
}

TEST_CASE("a clean yeast gives no phenol, acid or funk") {
    const Beer beer = brew_at_middle(pale_ale());
    CHECK(beer.drivers.phenol.median() == 0.0);
    CHECK(beer.drivers.sour.median() == 0.0);
    CHECK(beer.drivers.funk.median() == 0.0);
}

TEST_CASE("of several yeasts the strongest of each counts") {
    const Beer beer = brew_at_middle(pitched({american_ale(), saison_diastatic()}));
    CHECK(within(beer.drivers.phenol.median(), 4.0, 1e-6));
    CHECK(beer.drivers.diacetyl.median() ==
          brew_at_middle(pitched({american_ale()})).drivers.diacetyl.median());
}

// Common practice: lactic bacteria sour, Brettanomyces gives funk and hardly sours.
TEST_CASE("bacteria sour and Brettanomyces gives funk") {
    const Beer sour = brew_at_middle(pitched({american_ale(), lactic_bacteria()}));
    CHECK(sour.drivers.sour.median() > 3.0);
    CHECK(sour.drivers.funk.median() == 0.0);
    const Beer funky = brew_at_middle(pitched({american_ale(), brettanomyces()}));
    CHECK(funky.drivers.funk.median() > 2.0);
    CHECK(funky.drivers.sour.median() == 0.0);
}

// Common practice: two to three percent of acid malt only set the pH of a pale mash; a tenth and more is
// tasted.
TEST_CASE("acid malt is tasted only in quantity") {
    Fermentable acid_malt = fermentable("acidulated malt", FermentableKind::base, 78.0, 6.0, 2.4, 0.78);
    acid_malt.gives.acid = 1.0;
    const auto sour_with = [&](double kilograms) {
        Recipe recipe = pale_ale();
        recipe.grist.push_back(grist(acid_malt, kilograms));
        return brew_at_middle(recipe).drivers.sour.median();
    };
    CHECK(sour_with(0.12) == 0.0);
    CHECK(sour_with(0.6) > 1.0);
    CHECK(sour_with(0.6) <= 7.0);
}

TEST_CASE("levels differ between strains of a class and stay on the scale") {
    const Beer beer = brew_with(fermented_at(22.0), 256);
    const auto interval = beer.drivers.ester.interval();
    CHECK(interval.high - interval.low > 0.5);
    CHECK(beer.drivers.ester.chance([](double level) { return level < 0.0 || level > 7.0; }) == 0.0);
}

// Common practice of brewers of mixed fermentation: acid is there in weeks, the rest takes half a year.
TEST_CASE("a mixed culture gives half at once, all in half a year, and a fifth more in a year") {
    CHECK(within(slow_growth(0.0 * day), 0.5, 0.05));
    CHECK(within(slow_growth(26.0 * week), 1.0, 1e-9));
    CHECK(within(slow_growth(52.0 * week), 1.2, 1e-9));
    CHECK(slow_growth(13.0 * week) > slow_growth(4.0 * week));
    CHECK(slow_growth(104.0 * week) == slow_growth(52.0 * week));
}
