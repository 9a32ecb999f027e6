#include "brewing/hop_character.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Beer with_hops(std::vector<HopAddition> hops) {
    Recipe recipe = bare_recipe();
    recipe.grist = {grist(pale_ale_malt(), 4.5)};
    recipe.hops = std::move(hops);
    return brew_at_middle(recipe);
}

double aroma_of(std::vector<HopAddition> hops) {
    return in(with_hops(std::move(hops)).drivers.hop_aroma.total.median(), gram_per_liter);
}

double flavor_of(std::vector<HopAddition> hops) {
    return in(with_hops(std::move(hops)).drivers.hop_flavor.total.median(), gram_per_liter);
}

}  // namespace

// Order of hop aroma by the time of addition: common practice; traces after an hour: Kappler et al., Journal
// of the Institute of Brewing, 2011.
TEST_CASE("the later the hops, the more aroma, and a dry hop gives most") {
    const double hour = aroma_of({boiled(cascade(), 60.0, 60.0)});
    const double twenty = aroma_of({boiled(cascade(), 60.0, 20.0)});
    const double ten = aroma_of({boiled(cascade(), 60.0, 10.0)});
    const double end = aroma_of({boiled(cascade(), 60.0, 0.0)});
    const double stand = aroma_of({stood(cascade(), 60.0, 20.0, 75.0)});
    const double dry = aroma_of({dry_hopped(cascade(), 60.0, 4.0)});
    CHECK(hour < twenty);
    CHECK(twenty < ten);
    CHECK(ten < end);
    CHECK(end < stand);
    CHECK(stand < dry);
    CHECK(hour < 0.1 * dry);
}

TEST_CASE("the later the hops, the more flavor, and flavor fades more slowly than aroma") {
    const double hour = flavor_of({boiled(cascade(), 60.0, 60.0)});
    const double twenty = flavor_of({boiled(cascade(), 60.0, 20.0)});
    const double end = flavor_of({boiled(cascade(), 60.0, 0.0)});
    CHECK(hour < twenty);
    CHECK(twenty < end);
    CHECK(twenty > aroma_of({boiled(cascade(), 60.0, 20.0)}));
}

TEST_CASE("no hops, no hop character") {
    CHECK(aroma_of({}) == 0.0);
    CHECK(flavor_of({}) == 0.0);
    CHECK(with_hops({}).drivers.dry_hops.total.median() == 0.0 * gram_per_liter);
    CHECK(aroma_of({dry_hopped(hop("Oilless", 5.0, 0.0), 60.0, 4.0)}) == 0.0);
}

TEST_CASE("more hops never give less aroma, and each gram of a large dry hop gives less") {
    double before = 0.0;
    double gain_before = 1e9;
    for (double grams = 40.0; grams <= 400.0; grams += 40.0) {
        const double found = aroma_of({dry_hopped(cascade(), grams, 4.0)});
        CHECK(found > before);
        CHECK(found - before <= gain_before + 1e-9);
        gain_before = found - before;
        before = found;
    }
}

TEST_CASE("hops with more oil give more aroma") {
    CHECK(aroma_of({dry_hopped(hop("Rich", 10.0, 2.5), 60.0, 4.0)}) >
          aroma_of({dry_hopped(hop("Poor", 10.0, 0.8), 60.0, 4.0)}));
}

TEST_CASE("dry hops are told as they lie in the beer") {
    const Beer beer = with_hops(
        {dry_hopped(cascade(), 60.0, 4.0), dry_hopped(magnum(), 20.0, 4.0), boiled(magnum(), 20.0, 60.0)});
    CHECK(within(in(beer.drivers.dry_hops.total.median(), gram_per_liter), 4.0, 1e-9));
    REQUIRE(beer.drivers.dry_hops.sources.size() == 2);
    CHECK(beer.drivers.dry_hops.sources[0].ingredient == "Cascade as dry hop");
}

TEST_CASE("hop aroma names its sources, the strongest first") {
    const Beer beer = with_hops({boiled(magnum(), 20.0, 60.0, 20), boiled(cascade(), 30.0, 5.0, 21),
                                 dry_hopped(cascade(), 60.0, 4.0, 22)});
    REQUIRE(!beer.drivers.hop_aroma.sources.empty());
    CHECK(beer.drivers.hop_aroma.sources.front().position == Position{22, 5});
}

// Common practice: hops stand in a whirlpool for some twenty minutes, at 80 to 90 °C where it is cooled for
// them.
TEST_CASE("a stand that is not told is one of twenty minutes at 85 degrees") {
    HopAddition open = stood(cascade(), 60.0, 20.0, 85.0);
    open.time.reset();
    CHECK(within(aroma_of({open}), aroma_of({stood(cascade(), 60.0, 20.0, 85.0)}), 1e-9));
    open.temperature.reset();
    CHECK(within(aroma_of({open}), aroma_of({stood(cascade(), 60.0, 20.0, 85.0)}), 1e-9));
}

// Common practice: dry hops stay three to five days.
TEST_CASE("a dry hop whose time is not told is one of four days") {
    HopAddition open = dry_hopped(cascade(), 60.0, 4.0);
    open.time.reset();
    CHECK(within(aroma_of({open}), aroma_of({dry_hopped(cascade(), 60.0, 4.0)}), 1e-12));
}
