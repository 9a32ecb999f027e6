#include "brewing/blend.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Recipe stout() {
    Recipe recipe = pale_ale();
    recipe.grist.push_back(grist(black_malt(), 0.4, GristUse::mash, 12));
    recipe.grist.front().mass = 6.0 * kilogram;
    return recipe;
}

}  // namespace

// Common practice of blenders: what is dissolved mixes by volume. Two parts of 4 % and one of 7 % make 5 %.
TEST_CASE("numbers of a blend lie between those of its beers, by volume") {
    const Beer pale = brew_at_middle(pale_ale());
    const Beer dark = brew_at_middle(stout());
    const Beer third = blended(pale, dark, whole / 3.0);
    CHECK(within(alcohol(third), (2.0 * alcohol(pale) + alcohol(dark)) / 3.0, 0.01));
    CHECK(within(bitterness(third), (2.0 * bitterness(pale) + bitterness(dark)) / 3.0, 0.1));
    CHECK(within(color(third), (2.0 * color(pale) + color(dark)) / 3.0, 0.1));
    CHECK(original_gravity(third) > original_gravity(pale));
    CHECK(original_gravity(third) < original_gravity(dark));
    CHECK(final_gravity(third) > final_gravity(pale));
    CHECK(final_gravity(third) < final_gravity(dark));
    CHECK(third.drivers.roast.total.median() < dark.drivers.roast.total.median());
    CHECK(third.drivers.roast.total.median() > pale.drivers.roast.total.median());
    CHECK(third.apparent_attenuation.median() > 0.6 * fully_attenuated);
    CHECK(third.apparent_attenuation.median() < 0.9 * fully_attenuated);
}

TEST_CASE("none of the other beer leaves a beer as it is, and all of it is the other") {
    const Beer pale = brew_at_middle(pale_ale());
    const Beer dark = brew_at_middle(stout());
    const Beer none = blended(pale, dark, 0.0 * whole);
    CHECK(within(alcohol(none), alcohol(pale), 1e-9));
    CHECK(within(original_gravity(none), original_gravity(pale), 1e-9));
    CHECK(within(none.drivers.ester.median(), pale.drivers.ester.median(), 1e-9));
    const Beer all = blended(pale, dark, 1.0 * whole);
    CHECK(within(color(all), color(dark), 1e-9));
    CHECK(within(real_extract_of(all), real_extract_of(dark), 1e-9));
}

TEST_CASE("a little of a phenolic beer is still there to smell, and half of it nearly as strong") {
    Recipe spicy = pale_ale();
    spicy.yeasts.front().yeast = saison_diastatic();
    const Beer clean = brew_at_middle(pale_ale());
    const Beer phenolic = brew_at_middle(spicy);
    const double strong = phenolic.drivers.phenol.median();
    const double half = blended(clean, phenolic, 0.5 * whole).drivers.phenol.median();
    CHECK(half < strong);
    // Half the amount is hardly more than one step less: intensity follows ratios, not differences (Weber and
    // Fechner; Fechner, Elemente der Psychophysik, 1860).
    CHECK(half > strong - 1.3);
}

TEST_CASE("sources of a blend add up, and the second beer's are told apart") {
    const Beer pale = brew_at_middle(pale_ale());
    const Beer dark = brew_at_middle(stout());
    const Beer half = blended(pale, dark, 0.5 * whole);
    double sum = 0.0;
    bool of_second = false;
    for (const SourceShare& source : half.color.sources) {
        sum += source.share;
        of_second = of_second || source.position.line >= second_beer_lines;
    }
    CHECK(within(sum, 1.0, 0.01));
    CHECK(of_second);
}

TEST_CASE("of a blend's gravity the stronger beer brings the larger part") {
    Recipe strong = pale_ale();
    for (GristAddition& addition : strong.grist) {
        addition.mass *= 2.0;
    }
    const Beer weak = brew_at_middle(pale_ale());
    const Beer half = blended(weak, brew_at_middle(strong), 0.5 * whole);
    double of_the_strong = 0.0;
    for (const SourceShare& source : half.original_gravity.sources) {
        of_the_strong += source.position.line >= second_beer_lines ? source.share : 0.0;
    }
    CHECK(within(of_the_strong, 2.0 / 3.0, 0.02));
}

TEST_CASE("water thins everything and keeps the attenuation and the gas") {
    const Beer beer = brew_at_middle(stout());
    const Beer thin = diluted(beer, 0.2 * whole);
    CHECK(within(alcohol(thin), 0.8 * alcohol(beer), 0.01));
    CHECK(within(original_gravity(thin), 1.0 + 0.8 * (original_gravity(beer) - 1.0), 1e-6));
    CHECK(within(in(thin.apparent_attenuation.median(), fully_attenuated),
                 in(beer.apparent_attenuation.median(), fully_attenuated), 0.01));
    CHECK(thin.carbonation.median() == beer.carbonation.median());
    CHECK(thin.drivers.adjunct_share == beer.drivers.adjunct_share);
}

TEST_CASE("sources of a blend's gravity add up, and what a share of the grist is blends as well") {
    const Beer pale = brew_at_middle(pale_ale());
    Recipe wheaty = pale_ale();
    wheaty.grist.front().fermentable.groups = {"wheat"};
    const Beer wheat = brew_at_middle(wheaty);
    const Beer third = blended(pale, wheat, whole / 3.0);
    double sum = 0.0;
    for (const SourceShare& source : third.original_gravity.sources) {
        sum += source.share;
    }
    CHECK(within(sum, 1.0, 0.01));
    CHECK(wheat.drivers.wheat_like_share > 0.5);
    CHECK(within(third.drivers.wheat_like_share, wheat.drivers.wheat_like_share / 3.0, 1e-9));
}

TEST_CASE("a blend holds the fruit or wood of either of its beers") {
    const Beer plain = brew_at_middle(pale_ale());
    Beer on_wood = plain;
    on_wood.drivers.fruit_or_wood = true;
    CHECK(blended(plain, on_wood, 0.1 * whole).drivers.fruit_or_wood);
    CHECK(blended(on_wood, plain, 0.1 * whole).drivers.fruit_or_wood);
    CHECK_FALSE(blended(plain, plain, 0.1 * whole).drivers.fruit_or_wood);
}

TEST_CASE("bitterness of a blend mixes by volume by each formula, and water brings none") {
    Recipe twice_hopped = pale_ale();
    for (HopAddition& addition : twice_hopped.hops) {
        addition.mass = 2.0 * addition.mass;
    }
    const Beer mild = brew_at_middle(pale_ale());
    const Beer bitter = brew_at_middle(twice_hopped);
    const Beer half = blended(mild, bitter, 0.5 * whole);
    for (const auto formula :
         {&OtherBitterness::tinseth, &OtherBitterness::rager, &OtherBitterness::garetz}) {
        const Bitterness mixed = half.other_bitterness.*formula;
        CHECK(mixed > mild.other_bitterness.*formula);
        CHECK(mixed < bitter.other_bitterness.*formula);
        CHECK(within(in(mixed - mild.other_bitterness.*formula, ibu),
                     in(bitter.other_bitterness.*formula - mixed, ibu), 1e-6));
    }
    const Beer thinned = diluted(mild, 0.5 * whole);
    CHECK(within(bitterness(thinned), 0.5 * bitterness(mild), 1e-6));
    CHECK(within(in(thinned.tasted_bitterness.median(), ibu), 0.5 * in(mild.tasted_bitterness.median(), ibu),
                 1e-6));
    CHECK(within(real_extract_of(thinned), 0.5 * real_extract_of(mild), 1e-6));
}

TEST_CASE("a quarter of a beer brings a quarter of its adjuncts and of the bitterness of its hops") {
    Beer plain = brew_at_middle(pale_ale());
    Beer thinned = plain;
    plain.drivers.adjunct_share = 0.4;
    thinned.drivers.adjunct_share = 0.0;
    CHECK(within(blended(plain, thinned, 0.25 * whole).drivers.adjunct_share, 0.3, 1e-9));
    double of_second = 0.0;
    for (const SourceShare& source : blended(plain, thinned, 0.25 * whole).bitterness.sources) {
        of_second += source.position.line >= second_beer_lines ? source.share : 0.0;
    }
    CHECK(within(of_second, 0.25, 0.001));
}
