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

// Common practice: the mash tun keeps some of the malt's extract and flavor, the kettle gets all of an
// extract's.
TEST_CASE("what needs no mash gives all of its flavor wherever it is added") {
    const auto malt_of = [](Fermentable what, GristUse use, double efficiency) {
        Recipe recipe = bare_recipe();
        recipe.efficiency = Uncertain<Share>{efficiency * percent, 0.0 * percent};
        recipe.grist = {grist(pale_ale_malt(), 4.0), grist(std::move(what), 1.0, use)};
        const Drivers drivers = brew_at_middle(recipe).drivers;
        recipe.grist.pop_back();
        return in(drivers.malt.total.median() - brew_at_middle(recipe).drivers.malt.total.median(),
                  gram_per_liter);
    };
    const double in_the_boil = malt_of(pale_malt_extract(), GristUse::boil, 60.0);
    CHECK(in_the_boil > 40.0);
    CHECK(within(malt_of(pale_malt_extract(), GristUse::mash, 60.0), in_the_boil, 0.5));
    CHECK(malt_of(pale_ale_malt(), GristUse::mash, 60.0) <
          0.9 * malt_of(pale_ale_malt(), GristUse::mash, 72.0));
}
