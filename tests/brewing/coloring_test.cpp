#include "brewing/coloring.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

// Common practice: a pilsner of 12 °P from pilsner malt alone has 3 to 4 SRM.
TEST_CASE("a beer of pilsner malt alone is straw colored") {
    const double found = color(brew_at_middle(of_grist({grist(pilsner_malt(), 4.6)})));
    CHECK(found >= 2.5);
    CHECK(found <= 4.5);
}

// Common practice: a stout with five percent of black malt or more is above 30 SRM; dry stout 25 to 40 SRM
// (Beer Judge Certification Program, Beer Style Guidelines, 2021, 15B), with about a tenth of roasted grain.
TEST_CASE("dark malts make the color of their styles") {
    const double five_percent =
        color(brew_at_middle(of_grist({grist(pale_ale_malt(), 6.65), grist(black_malt(), 0.35)})));
    const double ten_percent =
        color(brew_at_middle(of_grist({grist(pale_ale_malt(), 3.9), grist(black_malt(), 0.43)})));
    CHECK(five_percent > 28.0);
    CHECK(ten_percent > 25.0);
    CHECK(ten_percent < 45.0);
}

// Spearot and Lahne 2016 as commonly reported: some four percent of black malt turn a pale ale dark.
TEST_CASE("four percent of black malt turn a pale ale dark") {
    CHECK(color(brew_at_middle(of_grist({grist(pale_ale_malt(), 4.8), grist(black_malt(), 0.2)}))) > 17.0);
}

TEST_CASE("more dark malt is never paler, more volume never darker") {
    double before = 0.0;
    for (double kilograms = 0.0; kilograms <= 1.0; kilograms += 0.05) {
        const double found =
            color(brew_at_middle(of_grist({grist(pale_ale_malt(), 4.0), grist(black_malt(), kilograms)})));
        CHECK(found > before);
        before = found;
    }
    Recipe large = of_grist({grist(pale_ale_malt(), 4.0)});
    const double found = color(brew_at_middle(large));
    large.volume.middle = 30.0 * liter;
    CHECK(color(brew_at_middle(large)) < found);
}

TEST_CASE("the malt that colors most comes first") {
    const Beer beer = brew_at_middle(of_grist({grist(pale_ale_malt(), 4.0), grist(black_malt(), 0.1)}));
    REQUIRE(beer.color.sources.size() == 2);
    CHECK(beer.color.sources[0].ingredient == "black malt");
    CHECK(within(beer.color.sources[0].share + beer.color.sources[1].share, 1.0, 1e-12));
}

TEST_CASE("a measured color replaces the curve and leaves the shares") {
    Recipe recipe = pale_ale();
    const Beer before = brew_at_middle(recipe);
    recipe.measured.color = Uncertain<Color>{14.0 * srm, 0.0 * srm};
    const Beer after = brew_at_middle(recipe);
    CHECK(color(after) == 14.0);
    REQUIRE(after.color.sources.size() == before.color.sources.size());
    CHECK(after.color.sources[0].share == before.color.sources[0].share);
}

TEST_CASE("a measured color is known better than one worked out, and no color is below nothing") {
    Recipe recipe = pale_ale();
    const auto estimated = brew_with(recipe, 256).color.total.interval();
    recipe.measured.color = Uncertain<Color>{estimated.median, 0.0 * srm};
    const auto measured = brew_with(recipe, 256).color.total.interval();
    CHECK(measured.high - measured.low < 0.5 * (estimated.high - estimated.low));
    CHECK(estimated.low > 0.0 * srm);
}
