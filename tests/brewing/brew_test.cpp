#include "brewing/brew.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "brewing/process.hpp"
#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// A recipe with something of everything that could be told in another order.
Recipe crowded() {
    Recipe recipe = pale_ale();
    recipe.grist.push_back(grist(sucrose(), 0.2, GristUse::boil, 12));
    recipe.grist.push_back(grist(black_malt(), 0.05, GristUse::mash, 13));
    recipe.grist.push_back(grist(crystal_malt(), 0.1, GristUse::mash, 14));
    recipe.hops.push_back(stood(cascade(), 40.0, 20.0, 85.0, 23));
    recipe.hops.push_back(stood(cascade(), 40.0, 20.0, 75.0, 24));
    recipe.hops.push_back(dry_hopped(cascade(), 60.0, 4.0, 25));
    HopAddition whole_cones = recipe.hops[1];
    whole_cones.form = HopForm::whole;
    recipe.hops.push_back(whole_cones);
    for (const double grams : {10.0, 7.3, 3.1}) {
        ExtraAddition spice;
        spice.name = "coriander";
        spice.kind = ExtraKind::spice;
        spice.mass = grams * gram;
        recipe.extras.push_back(spice);
    }
    recipe.yeasts.push_back({.yeast = saison_diastatic(), .attenuation_is_stated = false, .position = {}});
    return recipe;
}

bool same(const Beer& first, const Beer& second) {
    return first.original_gravity.total.draws() == second.original_gravity.total.draws() &&
           first.final_gravity.draws() == second.final_gravity.draws() &&
           first.real_extract.draws() == second.real_extract.draws() &&
           first.alcohol.draws() == second.alcohol.draws() &&
           first.bitterness.total.draws() == second.bitterness.total.draws() &&
           first.other_bitterness.tinseth == second.other_bitterness.tinseth &&
           first.color.total.draws() == second.color.total.draws() &&
           first.carbonation.draws() == second.carbonation.draws();
}

bool same_character(const Drivers& first, const Drivers& second) {
    return first.malt.total.draws() == second.malt.total.draws() &&
           first.caramel.total.draws() == second.caramel.total.draws() &&
           first.hop_aroma.total.draws() == second.hop_aroma.total.draws() &&
           first.hop_flavor.total.draws() == second.hop_flavor.total.draws() &&
           first.spice.total.draws() == second.spice.total.draws() &&
           first.ester.draws() == second.ester.draws() && first.phenol.draws() == second.phenol.draws() &&
           first.dms.draws() == second.dms.draws() && first.flocculation == second.flocculation;
}

template <class Quantity>
double width_of(const Estimate<Quantity>& estimate) {
    const auto interval = estimate.interval();
    return (interval.high - interval.low).value();
}

template <class Value>
void check_in_order(const Estimate<Value>& estimate) {
    const auto interval = estimate.interval();
    CHECK(interval.low <= interval.median);
    CHECK(interval.median <= interval.high);
    CHECK(interval.median == estimate.median());
}

}  // namespace

TEST_CASE("the order of ingredients does not matter, bit for bit") {
    Recipe recipe = crowded();
    const Beer before = brew_with(recipe, 64);
    for (int turn = 0; turn < 4; ++turn) {
        std::rotate(recipe.grist.begin(), recipe.grist.begin() + 1, recipe.grist.end());
        std::rotate(recipe.hops.begin(), recipe.hops.begin() + 2, recipe.hops.end());
        std::rotate(recipe.extras.begin(), recipe.extras.begin() + 1, recipe.extras.end());
        std::rotate(recipe.yeasts.begin(), recipe.yeasts.begin() + 1, recipe.yeasts.end());
        const Beer after = brew_with(recipe, 64);
        CAPTURE(turn);
        CHECK(same(before, after));
        CHECK(same_character(before.drivers, after.drivers));
    }
}

TEST_CASE("the temperature assumed for several yeasts does not hang on their order") {
    Recipe recipe = crowded();
    recipe.fermentation_temperature.reset();
    const Beer before = brew_with(recipe, 16);
    std::reverse(recipe.yeasts.begin(), recipe.yeasts.end());
    const Beer after = brew_with(recipe, 16);
    CHECK(before.drivers.ester.draws() == after.drivers.ester.draws());
    CHECK(before.assumptions == after.assumptions);
}

TEST_CASE("the same recipe gives the same beer every time") {
    const Recipe recipe = crowded();
    CHECK(same(brew_with(recipe, 128), brew_with(recipe, 128)));
}

// Common practice: a recipe is scaled by weighing everything by the same factor.
TEST_CASE("scaling the whole recipe leaves every number") {
    const Recipe recipe = crowded();
    const Beer small = brew_with(recipe, 64);
    for (const double factor : {0.25, 3.0, 50.0}) {
        const Beer large = brew_with(scaled(recipe, factor), 64);
        CAPTURE(factor);
        CHECK(within(original_gravity(large), original_gravity(small), 1e-9));
        CHECK(within(final_gravity(large), final_gravity(small), 1e-9));
        CHECK(within(alcohol(large), alcohol(small), 1e-7));
        CHECK(within(bitterness(large), bitterness(small), 1e-7));
        CHECK(within(color(large), color(small), 1e-7));
        CHECK(within(in(large.other_bitterness.garetz, small.other_bitterness.garetz), 1.0, 1e-9));
        const Drivers& drivers = large.drivers;
        CHECK(within(in(drivers.malt.total.median(), small.drivers.malt.total.median()), 1.0, 1e-9));
        CHECK(
            within(in(drivers.hop_aroma.total.median(), small.drivers.hop_aroma.total.median()), 1.0, 1e-9));
        CHECK(within(in(drivers.spice.total.median(), small.drivers.spice.total.median()), 1.0, 1e-9));
        CHECK(within(drivers.dms.median(), small.drivers.dms.median(), 1e-9));
    }
}

// Common practice: 4.6 kg of pale malt and a little crystal in 20 L at 72 % make an ordinary pale ale of
// about 1.054 and 5.5 %.
TEST_CASE("a plain pale ale comes out as one") {
    const Beer beer = brew_with(pale_ale(), 256);
    CHECK(within(original_gravity(beer), 1.054, 0.003));
    CHECK(within(final_gravity(beer), 1.012, 0.003));
    CHECK(within(alcohol(beer), 5.5, 0.5));
    // By hand with the usual tables: 27 IBU from the hour's boil, 7 from 15 min, 5 from flame-out, 1 from
    // malt.
    CHECK(within(bitterness(beer), 40.0, 8.0));
    CHECK(within(color(beer), 8.0, 3.0));
    CHECK(within(in(beer.carbonation.median(), volume_of_co2), 2.4, 0.05));
    CHECK(beer.assumptions.empty());
}

TEST_CASE("every interval holds its median, and every estimate has the draws asked for") {
    const Beer beer = brew_with(crowded(), 128);
    check_in_order(beer.original_gravity.total);
    check_in_order(beer.final_gravity);
    check_in_order(beer.original_extract);
    check_in_order(beer.apparent_extract);
    check_in_order(beer.real_extract);
    check_in_order(beer.apparent_attenuation);
    check_in_order(beer.alcohol);
    check_in_order(beer.bitterness.total);
    check_in_order(beer.color.total);
    check_in_order(beer.carbonation);
    check_in_order(beer.drivers.ester);
    CHECK(beer.alcohol.count() == 128);
    CHECK(beer.drivers.smoke.total.count() == 128);
    CHECK(beer.drivers.spice.total.count() == 128);
    CHECK(beer.drivers.dms.count() == 128);
}

TEST_CASE("the single draw at the middle lies inside the interval of many") {
    const Beer many = brew_with(pale_ale(), 256);
    const Beer middle = brew_at_middle(pale_ale());
    const auto gravity = many.original_gravity.total.interval();
    const auto bitter = many.bitterness.total.interval();
    const auto strength = many.alcohol.interval();
    CHECK(middle.original_gravity.total.median() > gravity.low);
    CHECK(middle.original_gravity.total.median() < gravity.high);
    CHECK(middle.bitterness.total.median() > bitter.low);
    CHECK(middle.bitterness.total.median() < bitter.high);
    CHECK(middle.alcohol.median() > strength.low);
    CHECK(middle.alcohol.median() < strength.high);
}

TEST_CASE("what is missing widens the intervals and is listed") {
    Recipe open = pale_ale();
    open.efficiency.reset();
    open.mash.clear();
    open.boil = {};
    open.fermentation_temperature.reset();
    open.yeasts.clear();
    open.conditioning.carbonation.reset();
    const Beer stated = brew_with(pale_ale(), 256);
    const Beer assumed = brew_with(open, 256);
    CHECK(width_of(assumed.original_gravity.total) > 1.3 * width_of(stated.original_gravity.total));
    CHECK(width_of(assumed.final_gravity) > width_of(stated.final_gravity));
    CHECK(width_of(assumed.alcohol) > width_of(stated.alcohol));
    CHECK(width_of(assumed.carbonation) > width_of(stated.carbonation));
    CHECK(assumed.assumptions.size() >= 6);
}

TEST_CASE("what was measured narrows the intervals") {
    Recipe measured = pale_ale();
    measured.measured.original_gravity =
        Uncertain<SpecificGravity>{1.053 * specific_gravity, 0.0 * specific_gravity};
    measured.measured.final_gravity =
        Uncertain<SpecificGravity>{1.012 * specific_gravity, 0.0 * specific_gravity};
    measured.measured.carbonation = Uncertain<Carbonation>{2.6 * volume_of_co2, 0.0 * volume_of_co2};
    const Beer before = brew_with(pale_ale(), 256);
    const Beer after = brew_with(measured, 256);
    CHECK(width_of(after.original_gravity.total) < width_of(before.original_gravity.total));
    CHECK(width_of(after.final_gravity) < width_of(before.final_gravity));
    CHECK(width_of(after.alcohol) < width_of(before.alcohol));
    CHECK(within(in(after.carbonation.median(), volume_of_co2), 2.6, 0.01));
}

TEST_CASE("a stronger wort from the same grist makes a stronger beer") {
    Recipe weak = pale_ale();
    Recipe strong = pale_ale();
    weak.measured.original_gravity =
        Uncertain<SpecificGravity>{1.040 * specific_gravity, 0.0 * specific_gravity};
    strong.measured.original_gravity =
        Uncertain<SpecificGravity>{1.070 * specific_gravity, 0.0 * specific_gravity};
    const Beer small = brew_at_middle(weak);
    const Beer large = brew_at_middle(strong);
    // Common practice: ten gravity points at 77 % attenuation are about one percent of alcohol.
    CHECK(within(alcohol(large) - alcohol(small), 3.0, 0.4));
    CHECK(large.drivers.malt.total.median() > small.drivers.malt.total.median());
}

TEST_CASE("grain that a mash gets more out of gives more flavor too, sugar none") {
    Recipe rich = pale_ale();
    rich.efficiency = Uncertain<Share>{85.0 * percent, 0.0 * percent};
    CHECK(brew_at_middle(rich).drivers.malt.total.median() >
          brew_at_middle(pale_ale()).drivers.malt.total.median());
    Recipe sugared = pale_ale();
    sugared.grist.push_back(grist(sucrose(), 0.5, GristUse::boil));
    const Drivers drivers = brew_at_middle(sugared).drivers;
    CHECK(drivers.malt.total.median() == brew_at_middle(pale_ale()).drivers.malt.total.median());
    CHECK(drivers.adjunct_share > 0.1);
    CHECK(drivers.adjunct_share < 0.2);
}

TEST_CASE("grain flavors come from the malts that have them") {
    const Drivers plain = brew_at_middle(pale_ale()).drivers;
    CHECK(plain.roast.total.median() == 0.0 * gram_per_liter);
    CHECK(plain.smoke.total.median() == 0.0 * gram_per_liter);
    CHECK(plain.lactose.total.median() == 0.0 * gram_per_liter);
    // 0.3 kg of the reference crystal malt in 20 L.
    CHECK(within(in(plain.caramel.total.median(), gram_per_liter), 15.0, 0.1));
    REQUIRE(plain.caramel.sources.size() == 1);
    CHECK(plain.caramel.sources[0].ingredient == "crystal medium");
    CHECK(plain.caramel.sources[0].position == Position{11, 5});
}

TEST_CASE("a recipe of nearly nothing is brewed all the same") {
    Recipe recipe;
    recipe.volume = {20.0 * liter, 0.0 * liter};
    const Beer beer = brew_with(recipe, 16);
    CHECK(within(original_gravity(beer), 1.0, 0.001));
    CHECK(alcohol(beer) < 0.2);
    CHECK(beer.bitterness.sources.empty());
}

TEST_CASE("a recipe of very many malts and hops is brewed all the same") {
    Recipe recipe = bare_recipe();
    for (int number = 0; number < 60; ++number) {
        Fermentable malt = pale_ale_malt();
        malt.name += " " + std::to_string(number);
        recipe.grist.push_back(grist(malt, 0.08));
        recipe.hops.push_back(boiled(hop("Hop " + std::to_string(number), 5.0, 1.0), 2.0, 30.0));
    }
    for (int names = 40; names <= 60; ++names) {
        Recipe part = recipe;
        part.grist.resize(static_cast<std::size_t>(names));
        const Beer beer = brew_with(part, 16);
        CHECK(original_gravity(beer) > 1.03);
        CHECK(original_gravity(beer) < 1.06);
    }
}
