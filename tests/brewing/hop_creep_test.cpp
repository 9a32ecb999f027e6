#include "brewing/hop_creep.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double creep(double grams_in_liter, double days, double degrees) {
    return in(hop_creep(grams_in_liter * gram_per_liter, days * day, celsius(degrees)), whole);
}

/// A beer of 16 °P with dry hops at 15 g/L.
Recipe hoppy(double days, HopForm form = HopForm::pellet) {
    Recipe recipe = pale_ale();
    recipe.measured.original_gravity =
        Uncertain<SpecificGravity>{1.065 * specific_gravity, 0.0 * specific_gravity};
    recipe.hops.push_back(dry_hopped(cascade(), 15.0 * in(recipe.volume.middle, liter), days));
    recipe.hops.back().form = form;
    recipe.hops.back().temperature = celsius(20.0);
    return recipe;
}

double apparent_extract_left(const Recipe& recipe) {
    return in(brew_at_middle(recipe).apparent_extract.median(), plato);
}

}  // namespace

// Stokholm and Shellhammer, Hop creep, technical brief of the Brewers Association, 2020, from memory.
TEST_CASE("weeks of warmth on much dry hop take one to two degrees Plato") {
    const double fall = apparent_extract_left(hoppy(0.0)) - apparent_extract_left(hoppy(35.0));
    CHECK(fall > 1.0);
    CHECK(fall < 2.0);
}

// Common practice: a dry hop of a few days takes a gravity point or two.
TEST_CASE("a few days take a point or two of gravity") {
    const double fall = final_gravity(brew_at_middle(hoppy(0.0))) - final_gravity(brew_at_middle(hoppy(4.0)));
    CHECK(fall > 0.0005);
    CHECK(fall < 0.0025);
}

TEST_CASE("hop creep rises with rate, time and warmth, and levels off") {
    CHECK(creep(0.0, 10.0, 20.0) == 0.0);
    CHECK(creep(10.0, 0.0, 20.0) == 0.0);
    CHECK(creep(10.0, 10.0, 20.0) > creep(5.0, 10.0, 20.0));
    CHECK(creep(10.0, 10.0, 20.0) > creep(10.0, 5.0, 20.0));
    CHECK(creep(10.0, 10.0, 20.0) > creep(10.0, 10.0, 10.0));
    CHECK(creep(20.0, 10.0, 20.0) - creep(10.0, 10.0, 20.0) <
          creep(10.0, 10.0, 20.0) - creep(0.0, 10.0, 20.0));
    CHECK(creep(20.0, 40.0, 20.0) - creep(20.0, 30.0, 20.0) <
          creep(20.0, 20.0, 20.0) - creep(20.0, 10.0, 20.0));
}

// Kirkpatrick and Shellhammer, Evidence of dextrin hydrolyzing enzymes in Cascade hops, Journal of
// Agricultural and Food Chemistry 66, 2018: it is enzymes that do it; an extract holds none (common
// practice).
TEST_CASE("extracts of hops do not creep") {
    CHECK(apparent_extract_left(hoppy(35.0, HopForm::extract)) == apparent_extract_left(hoppy(0.0)));
}

TEST_CASE("a dry hop of nothing is none") {
    Recipe none = hoppy(7.0);
    none.hops.back().mass = 0.0 * gram;
    Recipe without = none;
    without.hops.pop_back();
    CHECK(apparent_extract_left(none) == apparent_extract_left(without));
}

TEST_CASE("what is to come is less the longer the hops were on the beer") {
    const auto to_come = [](const Recipe& recipe) {
        return in(hop_creep_to_come(recipe.hops, recipe.volume.middle, celsius(20.0)), whole);
    };
    CHECK(to_come(hoppy(2.0)) > to_come(hoppy(14.0)));
    CHECK(to_come(hoppy(14.0)) > 0.0);
    CHECK(within(to_come(hoppy(2.0)), creep(15.0, 56.0, 20.0) - creep(15.0, 2.0, 20.0), 1e-12));
    CHECK(to_come(hoppy(120.0)) == 0.0);
    CHECK(to_come(hoppy(2.0, HopForm::extract)) == 0.0);
}

TEST_CASE("two dry hops creep as one of their mass, each for its own time") {
    Recipe apart = hoppy(7.0);
    apart.hops.back().mass = 0.5 * apart.hops.back().mass;
    apart.hops.push_back(apart.hops.back());
    CHECK(within(apparent_extract_left(apart), apparent_extract_left(hoppy(7.0)), 1e-9));
    apart.hops.back().time = 2.0 * day;
    CHECK(apparent_extract_left(apart) > apparent_extract_left(hoppy(7.0)));
    CHECK(apparent_extract_left(apart) < apparent_extract_left(hoppy(2.0)));
}

// Common practice: neither hops nor brewing yeast split lactose.
TEST_CASE("hops leave lactose alone") {
    Recipe milk = hoppy(35.0);
    milk.grist.push_back(grist(lactose(), 1.0, GristUse::boil));
    Recipe still = milk;
    still.hops.back().form = HopForm::extract;
    const double fall_with_lactose = apparent_extract_left(still) - apparent_extract_left(milk);
    const double fall = apparent_extract_left(hoppy(0.0)) - apparent_extract_left(hoppy(35.0));
    // One part in six of the extract is lactose, so that the rest holds as much less of dextrins.
    CHECK(fall_with_lactose < 0.9 * fall);
    CHECK(fall_with_lactose > 0.7 * fall);
}
