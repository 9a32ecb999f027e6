#include "brewing/fermentation.hpp"

#include <doctest/doctest.h>

#include "tests/published/balance.hpp"
#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Recipe with_gravity(Recipe recipe, double gravity) {
    recipe.measured.original_gravity =
        Uncertain<SpecificGravity>{gravity * specific_gravity, 0.0 * specific_gravity};
    return recipe;
}

Recipe with_final_gravity(Recipe recipe, double gravity) {
    recipe.measured.final_gravity =
        Uncertain<SpecificGravity>{gravity * specific_gravity, 0.0 * specific_gravity};
    return recipe;
}

double apparent_attenuation_of(const Beer& beer) {
    return in(beer.apparent_attenuation.median(), fully_attenuated);
}

/// An extract brew of one gravity, with a part of its extract from something else.
Recipe extract_brew(const GristAddition& other) {
    Recipe recipe = bare_recipe();
    recipe.mashed = false;
    recipe.mash.clear();
    recipe.grist = {grist(pale_malt_extract(), 2.5, GristUse::boil), other};
    return with_gravity(recipe, 1.060);
}

}  // namespace

// Common practice: (1.050 - 1.0125) * 131 = 4.9 % by volume; 75 % apparent attenuation of 1.050 ends
// at 1.0125.
TEST_CASE("a plain wort of 1.050 with 75 % attenuation makes about 5 % alcohol") {
    const Beer beer = brew_at_middle(with_final_gravity(with_gravity(pale_ale(), 1.050), 1.0125));
    CHECK(within(alcohol(beer), 4.95, 0.1));
    CHECK(within(apparent_attenuation_of(beer), 0.75, 0.01));
}

// Cutaia, Reid and Speers, Journal of the Institute of Brewing 115, 2009: mean of 221 beers, whose gravities
// are 1.0456 and 1.0078.
TEST_CASE("real extract agrees with analyzed beers") {
    const Beer beer = brew_at_middle(with_final_gravity(with_gravity(pale_ale(), 1.0456), 1.0078));
    const published::AnalyzedBeer& mean = published::mean_of_221_beers;
    CHECK(within(in(beer.original_extract.median(), plato), mean.original_extract, 0.05));
    CHECK(within(in(beer.apparent_extract.median(), plato), mean.apparent_extract, 0.05));
    CHECK(within(real_extract_of(beer), mean.real_extract, 0.10));
}

// Common practice: an all-malt pale ale with a neutral ale yeast attenuates 74 to 82 %.
TEST_CASE("a pale ale attenuates as brewers expect") {
    const Beer beer = brew_at_middle(pale_ale());
    CHECK(apparent_attenuation_of(beer) > 0.74);
    CHECK(apparent_attenuation_of(beer) < 0.82);
}

// Nilo, Crystal malt fermentability experiment, 2011: two-row malt alone, mashed at 68 °C, with a dry English
// yeast, of which makers print 73 to 81 % (from memory). The curve of the mash is good to four points there.
TEST_CASE("malt alone attenuates about as far as was measured") {
    Recipe recipe = bare_recipe();
    recipe.grist = {grist(pale_ale_malt(), 4.6)};
    recipe.yeasts.front().yeast.attenuation.middle = 0.77 * fully_attenuated;
    CHECK(within(apparent_attenuation_of(brew_at_middle(mashed_at(68.0, recipe))), 0.80, 0.04));
}

// Common practice, and Chandrasekhar's mash data (82 % at 65 °C, 70 % at 70 °C, 50 % at 75 °C).
TEST_CASE("from 65 degrees on a hotter mash never lowers the final gravity") {
    double before = final_gravity(brew_at_middle(mashed_at(65.0)));
    for (double degrees = 65.5; degrees <= 80.0; degrees += 0.5) {
        const double gravity = final_gravity(brew_at_middle(mashed_at(degrees)));
        CAPTURE(degrees);
        CHECK(gravity >= before);
        before = gravity;
    }
    CHECK(before > final_gravity(brew_at_middle(mashed_at(65.0))) + 0.010);
}

// Andrews and Gilliland, Super-attenuation of beer, Journal of the Institute of Brewing 58, 1952.
TEST_CASE("diastatic yeast ends low whatever the mash") {
    Recipe saison = pale_ale();
    saison.yeasts.front().yeast = saison_diastatic();
    const double cool = final_gravity(brew_at_middle(mashed_at(64.0, saison)));
    const double hot = final_gravity(brew_at_middle(mashed_at(72.0, saison)));
    CHECK(within(cool, hot, 0.0005));
    CHECK(hot < 1.007);
    CHECK(hot < final_gravity(brew_at_middle(mashed_at(64.0))));
}

TEST_CASE("a yeast that attenuates further leaves a drier and stronger beer") {
    Recipe dry = pale_ale();
    dry.yeasts.front().yeast.attenuation.middle = 0.82 * fully_attenuated;
    Recipe full = pale_ale();
    full.yeasts.front().yeast.attenuation.middle = 0.68 * fully_attenuated;
    CHECK(final_gravity(brew_at_middle(dry)) < final_gravity(brew_at_middle(full)));
    CHECK(alcohol(brew_at_middle(dry)) > alcohol(brew_at_middle(full)));
}

// Common practice: simple sugar ferments whole.
TEST_CASE("sucrose in place of malt extract dries and strengthens a beer of the same gravity") {
    const Beer malty = brew_at_middle(extract_brew(grist(pale_malt_extract(), 0.6, GristUse::boil)));
    const Beer sugared = brew_at_middle(extract_brew(grist(sucrose(), 0.6, GristUse::boil)));
    CHECK(original_gravity(malty) == original_gravity(sugared));
    CHECK(final_gravity(sugared) < final_gravity(malty) - 0.002);
    CHECK(alcohol(sugared) > alcohol(malty) + 0.2);
}

// Sugar that ferments whole has an apparent attenuation of about 123 %: it ends below the gravity of water.
TEST_CASE("a sugar wash ends below the gravity of water") {
    Recipe wash = bare_recipe();
    wash.grist = {grist(sucrose(), 2.0, GristUse::fermenter)};
    const Beer beer = brew_at_middle(wash);
    CHECK(final_gravity(beer) < 1.000);
    CHECK(final_gravity(beer) > 0.985);
    CHECK(apparent_attenuation_of(beer) > 1.1);
    // Some of it becomes yeast and acids: common practice.
    CHECK(real_extract_of(beer) > 0.02 * in(beer.original_extract.median(), plato));
}

// Common practice: brewing yeast does not take lactose.
TEST_CASE("lactose raises the final gravity and leaves the alcohol as it is") {
    Recipe milk = pale_ale();
    milk.grist.push_back(grist(lactose(), 0.5, GristUse::boil));
    const Beer without = brew_at_middle(pale_ale());
    const Beer with = brew_at_middle(milk);
    // 0.5 kg of lactose in 20 L: about 9 gravity points, all of which stay.
    CHECK(within(final_gravity(with) - final_gravity(without), 0.009, 0.002));
    CHECK(within(alcohol(with), alcohol(without), 0.12));
    CHECK(real_extract_of(with) > real_extract_of(without) + 1.5);
}

TEST_CASE("lactose stays even where a yeast takes dextrins") {
    Recipe saison = pale_ale();
    saison.yeasts.front().yeast = saison_diastatic();
    Recipe milk = saison;
    milk.grist.push_back(grist(lactose(), 0.5, GristUse::boil));
    CHECK(final_gravity(brew_at_middle(milk)) > final_gravity(brew_at_middle(saison)) + 0.006);
}

// Nilo, Crystal malt fermentability experiment, 2011: crystal malt ferments less far than base malt.
TEST_CASE("crystal malt in place of base malt leaves more extract") {
    Recipe pale = bare_recipe();
    pale.grist = {grist(pale_ale_malt(), 5.0)};
    Recipe caramel = bare_recipe();
    caramel.grist = {grist(pale_ale_malt(), 4.0), grist(crystal_malt(), 1.0)};
    CHECK(final_gravity(brew_at_middle(with_gravity(caramel, 1.055))) >
          final_gravity(brew_at_middle(with_gravity(pale, 1.055))) + 0.001);
}

TEST_CASE("a strong wort stops where alcohol stops the yeast") {
    Recipe strong = pale_ale();
    strong.grist = {grist(pale_ale_malt(), 9.5)};
    strong.yeasts.front().yeast.alcohol_limit = 8.0 * percent_by_volume;
    const Beer stopped = brew_at_middle(strong);
    CHECK(within(alcohol(stopped), 8.0, 0.4));
    strong.yeasts.front().yeast.alcohol_limit = 16.0 * percent_by_volume;
    const Beer on = brew_at_middle(strong);
    CHECK(alcohol(on) > 9.5);
    CHECK(final_gravity(on) < final_gravity(stopped));
}

TEST_CASE("a measured final gravity moves alcohol, real extract and attenuation") {
    const Recipe recipe = with_gravity(pale_ale(), 1.054);
    const Beer dry = brew_at_middle(with_final_gravity(recipe, 1.008));
    const Beer full = brew_at_middle(with_final_gravity(recipe, 1.018));
    CHECK(final_gravity(dry) == 1.008);
    CHECK(final_gravity(full) == 1.018);
    // Common practice: ten points are 1.3 % by volume and about 2.1 °P of real extract.
    CHECK(within(alcohol(dry) - alcohol(full), 1.31, 0.06));
    CHECK(within(real_extract_of(full) - real_extract_of(dry), 2.08, 0.1));
    CHECK(apparent_attenuation_of(dry) > apparent_attenuation_of(full));
}

TEST_CASE("a measured alcohol replaces the one worked out and nothing else") {
    Recipe recipe = pale_ale();
    const Beer before = brew_at_middle(recipe);
    recipe.measured.alcohol = Uncertain<AlcoholByVolume>{6.1 * percent_by_volume, 0.0 * percent_by_volume};
    const Beer after = brew_at_middle(recipe);
    CHECK(within(alcohol(after), 6.1, 1e-9));
    CHECK(final_gravity(after) == final_gravity(before));
}

TEST_CASE("the yeast that attenuates furthest decides") {
    Recipe both = pale_ale();
    both.yeasts.push_back({.yeast = saison_diastatic(), .attenuation_is_stated = false, .position = {31, 5}});
    Recipe alone = pale_ale();
    alone.yeasts.front().yeast = saison_diastatic();
    CHECK(final_gravity(brew_at_middle(both)) == final_gravity(brew_at_middle(alone)));
}

// Common practice: brewers hit a final gravity to 0.002 to 0.004.
TEST_CASE("final gravity is as uncertain as brewers find it") {
    const auto interval = brew_with(pale_ale(), 256).final_gravity.interval();
    const double half_width = 0.5 * in(interval.high - interval.low, specific_gravity);
    CHECK(half_width > 0.0015);
    CHECK(half_width < 0.0055);
}

TEST_CASE("alcohol is never below nothing") {
    Recipe water = bare_recipe();
    const Beer beer = brew_with(water, 64);
    CHECK(beer.alcohol.chance([](AlcoholByVolume value) { return value < 0.0 * percent_by_volume; }) == 0.0);
    CHECK(alcohol(beer) < 0.2);
}

// Malt extract was mashed by its maker (common practice): no mash changes how far it ferments.
TEST_CASE("malt extract that goes into the mash ferments as it does from the kettle") {
    const auto ends_at = [](GristUse use, double degrees) {
        Recipe recipe = mashed_at(degrees);
        recipe.grist = {grist(pale_malt_extract(), 2.5, use)};
        return final_gravity(brew_at_middle(with_gravity(recipe, 1.050)));
    };
    CHECK(ends_at(GristUse::mash, 72.0) == ends_at(GristUse::mash, 64.0));
    CHECK(ends_at(GristUse::mash, 72.0) == ends_at(GristUse::boil, 72.0));
}

// Common practice: what is only steeped attenuates some 10 to 15 points less than it does in a mash, where
// enzymes of the base malt work on its dextrins.
TEST_CASE("steeped grain attenuates ten to fifteen points less than mashed grain") {
    const auto attenuation = [](bool mashed) {
        Recipe recipe = bare_recipe();
        recipe.mashed = mashed;
        recipe.grist = {grist(crystal_malt(), 5.0, GristUse::mash)};
        return apparent_attenuation_of(brew_at_middle(with_gravity(recipe, 1.050)));
    };
    const double lost = attenuation(true) - attenuation(false);
    CHECK(lost >= 0.10);
    CHECK(lost <= 0.15);
}
