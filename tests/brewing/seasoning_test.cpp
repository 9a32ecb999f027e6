#include "brewing/seasoning.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

ExtraAddition named(const std::string& name, ExtraKind kind) {
    ExtraAddition addition;
    addition.name = name;
    addition.kind = kind;
    return addition;
}

double spice_boiled(double minutes) {
    ExtraAddition addition = named("coriander", ExtraKind::spice);
    addition.mass = 20.0 * gram;
    addition.time = minutes * minute;
    return in(brew_at_middle(with_extra(addition)).drivers.spice.total.median(), gram_per_liter);
}

}  // namespace

// Common practice: brewers give 2 to 4 g of cloves or cinnamon where they give 15 g of coriander.
TEST_CASE("a few cloves speak as loud as a handful of coriander") {
    CHECK(3.0 * spice_potency("whole cloves") >= 0.6 * 15.0 * spice_potency("coriander"));
    CHECK(spice_potency("Ceylon cinnamon stick") > spice_potency("coriander seed"));
    CHECK(spice_potency("bitter orange peel") < spice_potency("coriander seed"));
    CHECK(spice_potency("meadow herb of no table") == 1.0);
}

// Common practice: spice goes into the last minutes, as a long boil drives it off.
TEST_CASE("a long boil leaves less spice, the last quarter of an hour all of it") {
    CHECK(spice_boiled(5.0) == spice_boiled(15.0));
    CHECK(spice_boiled(60.0) < 0.7 * spice_boiled(15.0));
}

TEST_CASE("table salt tastes salty, what hardens the water does not") {
    for (const char* name : {"sea salt", "Table salt", "sodium chloride", "salt", "kosher salt"}) {
        CAPTURE(name);
        CHECK(tastes_salty(name));
    }
    for (const char* name : {"gypsum", "calcium chloride", "Epsom salt", "magnesium sulfate"}) {
        CAPTURE(name);
        CHECK_FALSE(tastes_salty(name));
    }
}

// Common practice of brewers of wit and gose: some 10 to 20 g of coriander and of salt in 20 L.
TEST_CASE("what is named without an amount is there in a usual amount, and far from certain") {
    const Beer wit = brew_with(with_extra(named("coriander", ExtraKind::spice)), 256);
    const auto spice = wit.drivers.spice.total.interval();
    CHECK(within(in(spice.median, gram_per_liter), 0.6, 0.3));
    CHECK(spice.high > 1.7 * spice.low);
    const Beer gose = brew_with(with_extra(named("sea salt", ExtraKind::salt)), 256);
    const auto salt = gose.drivers.salt.total.interval();
    CHECK(within(in(salt.median, gram_per_liter), 0.75, 0.25));
    CHECK(salt.high > 1.7 * salt.low);
    REQUIRE(wit.assumptions.size() == 1);
    CHECK(wit.assumptions.front().find("coriander") != std::string::npos);
    REQUIRE(gose.assumptions.size() == 1);
    CHECK(gose.assumptions.front().find("sea salt") != std::string::npos);
}

TEST_CASE("gypsum without an amount needs no assumption") {
    CHECK(brew_at_middle(with_extra(named("gypsum", ExtraKind::salt))).assumptions.empty());
}

TEST_CASE("a tincture counts by its volume") {
    ExtraAddition tincture = named("vanilla tincture", ExtraKind::spice);
    tincture.volume = 10.0 * milliliter;
    tincture.use = ExtraUse::fermenter;
    const Beer beer = brew_at_middle(with_extra(tincture));
    CHECK(beer.drivers.spice.total.median() > Concentration());
    CHECK(beer.assumptions.empty());
}

// Common practice: the spices of a winter beer are given by the gram or two, where coriander is given by the
// handful.
TEST_CASE("all spices of clove's kind speak alike, and peel is milder than seed") {
    for (const char* name : {"cinnamon", "cassia bark", "nutmeg", "mace", "allspice berries", "star anise",
                             "cardamom pods", "dried chili", "saffron"}) {
        CAPTURE(name);
        CHECK(spice_potency(name) == spice_potency("cloves"));
    }
    CHECK(spice_potency("vanilla beans") == spice_potency("black pepper"));
    CHECK(spice_potency("fresh ginger") < spice_potency("black pepper"));
    CHECK(spice_potency("lemon zest") == spice_potency("bitter orange peel"));
}

// Common practice of brewers of wit: 5 to 15 g of coriander in 20 L.
TEST_CASE("the usual dose of coriander is ten grams in twenty liters, of cloves a quarter of it") {
    CHECK(within(in(usual_dose(named("coriander", ExtraKind::spice)).middle, gram_per_liter), 0.5, 0.05));
    CHECK(
        within(in(usual_dose(named("coriander", ExtraKind::spice)).half_width, gram_per_liter), 0.25, 0.03));
    CHECK(within(in(usual_dose(named("cloves", ExtraKind::spice)).middle, gram_per_liter), 0.125, 0.02));
}

// Common practice: a long boil drives spice off. How much it leaves is a working value.
TEST_CASE("each half hour of a long boil takes its part, an hour half of it, the mash nearly all") {
    const auto left = [](double minutes) { return in(spice_left(ExtraUse::boil, minutes * minute), whole); };
    CHECK(left(0.0) == 1.0);
    CHECK(within(left(60.0), 0.5, 1e-9));
    CHECK(within(left(37.5), 0.75, 1e-9));
    CHECK(within(left(90.0), 0.35, 0.05));
    CHECK(in(spice_left(ExtraUse::mash, 0.0 * minute), whole) < left(90.0));
    CHECK(spice_left(ExtraUse::fermenter, 90.0 * minute) == 1.0 * whole);
}
