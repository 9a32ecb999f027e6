#include "brewing/grain_character.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// Half of the mash is in these groups, in a batch of so many liters.
Drivers half_of(std::vector<std::string> groups, double liters) {
    Recipe recipe = bare_recipe();
    recipe.volume.middle = liters * liter;
    recipe.boil.evaporation = 0.15 * liters * liter_per_hour;
    const double kilograms = 0.11 * liters;
    recipe.grist = {grist(pale_ale_malt(), kilograms), grist(pale_ale_malt(), kilograms)};
    recipe.grist.back().fermentable.groups = std::move(groups);
    return brew_at_middle(recipe).drivers;
}

}  // namespace

TEST_CASE("a cup of beer holds the same share of wheat or sugar as a cask") {
    for (const double liters : {0.2, 20.0, 2000.0}) {
        CAPTURE(liters);
        for (const char* grain : {"wheat", "rye", "oats", "spelt"}) {
            CAPTURE(grain);
            CHECK(within(half_of({grain}, liters).wheat_like_share, 0.5, 1e-9));
            CHECK(half_of({grain}, liters).adjunct_share == 0.0);
        }
        for (const char* adjunct : {"sugar", "corn", "rice", "honey", "corn syrup"}) {
            CAPTURE(adjunct);
            CHECK(within(half_of({adjunct}, liters).adjunct_share, 0.5, 1e-9));
            CHECK(half_of({adjunct}, liters).wheat_like_share == 0.0);
        }
    }
}

TEST_CASE("a beer of hops and water alone has a share of nothing") {
    Recipe recipe = bare_recipe();
    recipe.hops = {boiled(magnum(), 10.0, 60.0)};
    const Drivers drivers = brew_at_middle(recipe).drivers;
    CHECK(drivers.wheat_like_share == 0.0);
    CHECK(drivers.adjunct_share == 0.0);
}
