#include "brewing/bittering.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double ibu_of(std::vector<HopAddition> hops) {
    return bitterness(brew_at_middle(hopped(std::move(hops))));
}

HopAddition used_as(HopUse use, double grams) {
    HopAddition addition = boiled(magnum(), grams, 60.0);
    addition.use = use;
    addition.time.reset();
    return addition;
}

}  // namespace

// Common practice: an ounce of 10 % alpha acids boiled an hour in five gallons of 1.050 gives 30 to 36 IBU by
// the usual formulas; laboratories find somewhat less.
TEST_CASE("an ounce at 10 % alpha boiled an hour in five gallons gives about 30 IBU") {
    Recipe recipe = hopped({boiled(hop("Anyhow", 10.0, 1.0), 28.35, 60.0)});
    recipe.volume.middle = 5.0 * gallon;
    const Beer beer = brew_at_middle(recipe);
    CHECK(bitterness(beer) > 24.0);
    CHECK(bitterness(beer) < 38.0);
    CHECK(within(in(beer.other_bitterness.tinseth, ibu), 33.5, 2.5));
}

// Hosom, web reports, 2015..2020, on eighteen ales: Garetz reads lowest, Rager highest.
TEST_CASE("the classical formulas stand in their known order") {
    const OtherBitterness other = brew_at_middle(hopped({boiled(magnum(), 20.0, 60.0)})).other_bitterness;
    CHECK(other.garetz < other.tinseth);
    CHECK(other.tinseth < other.rager);
}

// ASBC Beer-23 reads 1 to 3 IBU in unhopped beer (Hosom, web reports, 2015..2020).
TEST_CASE("beer without hops reads a little bitterness of malt") {
    const Beer beer = brew_at_middle(hopped({}));
    CHECK(bitterness(beer) > 0.5);
    CHECK(bitterness(beer) < 3.0);
    CHECK(beer.bitterness.sources.empty());
}

TEST_CASE("more kettle hops never lower the bitterness") {
    for (const auto& addition :
         {boiled(magnum(), 1.0, 60.0), boiled(cascade(), 1.0, 10.0), boiled(cascade(), 1.0, 0.0),
          stood(cascade(), 1.0, 20.0, 85.0), used_as(HopUse::first_wort, 1.0), used_as(HopUse::mash, 1.0)}) {
        double before = 0.0;
        for (double grams = 0.0; grams < 400.0; grams += 20.0) {
            HopAddition scaled = addition;
            scaled.mass = grams * gram;
            const double found = ibu_of({boiled(magnum(), 15.0, 60.0), scaled});
            CAPTURE(grams);
            CHECK(found >= before - 1e-9);
            before = found;
        }
    }
}

TEST_CASE("a longer boil gives more bitterness up to ninety minutes") {
    double before = 0.0;
    for (double minutes = 0.0; minutes <= 90.0; minutes += 10.0) {
        Recipe recipe = hopped({boiled(magnum(), 20.0, minutes)});
        recipe.boil.time = 90.0 * minute;
        const double found = bitterness(brew_at_middle(recipe));
        CAPTURE(minutes);
        CHECK(found > before);
        before = found;
    }
}

// Malowicki and Shellhammer, Isomerization and degradation kinetics of hop acids, Journal of Agricultural and
// Food Chemistry 53, 2005: isomerization slows with falling temperature.
TEST_CASE("a cooler whirlpool gives less bitterness, a boil more than any") {
    double before = ibu_of({boiled(cascade(), 60.0, 20.0)});
    for (double degrees = 98.0; degrees >= 66.0; degrees -= 8.0) {
        const double found = ibu_of({stood(cascade(), 60.0, 20.0, degrees)});
        CAPTURE(degrees);
        CHECK(found < before);
        before = found;
    }
}

// Justus, Tracking IBU through the brewing process, MBAA Technical Quarterly 55, 2018: most of the acids of
// mash hops stay behind.
TEST_CASE("mash hops give far less than first wort hops") {
    const double none = ibu_of({});
    const double mash = ibu_of({used_as(HopUse::mash, 20.0)}) - none;
    const double first_wort = ibu_of({used_as(HopUse::first_wort, 20.0)}) - none;
    CHECK(mash > 0.0);
    CHECK(mash < 0.4 * first_wort);
}

TEST_CASE("first wort hops are in the kettle for the whole boil") {
    CHECK(within(ibu_of({used_as(HopUse::first_wort, 20.0)}), ibu_of({boiled(magnum(), 20.0, 60.0)}), 1e-9));
}

TEST_CASE("stronger wort and larger volume lower the bitterness") {
    Recipe usual = hopped({boiled(magnum(), 20.0, 60.0)});
    Recipe large = usual;
    large.volume.middle = 30.0 * liter;
    CHECK(bitterness(brew_at_middle(large)) < bitterness(brew_at_middle(usual)));
    // The classical formulas know of gravity.
    Recipe strong = usual;
    strong.measured.original_gravity->middle = 1.090 * specific_gravity;
    CHECK(brew_at_middle(strong).other_bitterness.tinseth < brew_at_middle(usual).other_bitterness.tinseth);
}

// Parkin and Shellhammer, Toward understanding the bitterness of dry-hopped beer, Journal of the American
// Society of Brewing Chemists 75, 2017: dry hops raise the reading of an unhopped beer.
TEST_CASE("dry hops raise the reading of a beer that was hardly hopped") {
    CHECK(ibu_of({dry_hopped(cascade(), 200.0, 4.0)}) > ibu_of({}) + 3.0);
}

// Maye et al., Humulinone formation in hops and hop pellets, MBAA Technical Quarterly 53, 2016: dry hops take
// iso-alpha-acids out of a very bitter beer.
TEST_CASE("dry hops hardly raise, or lower, the reading of a very bitter beer") {
    const double before = ibu_of({boiled(magnum(), 60.0, 60.0)});
    const double after = ibu_of({boiled(magnum(), 60.0, 60.0), dry_hopped(cascade(), 100.0, 4.0)});
    const double gain_from_little = ibu_of({dry_hopped(cascade(), 100.0, 4.0)}) - ibu_of({});
    CHECK(after - before < gain_from_little);
}

TEST_CASE("each addition has its share, the largest first") {
    const Beer beer = brew_at_middle(pale_ale());
    REQUIRE(beer.bitterness.sources.size() == 3);
    CHECK(beer.bitterness.sources[0].position == Position{20, 5});
    double sum = 0.0;
    for (const SourceShare& source : beer.bitterness.sources) {
        sum += source.share;
    }
    CHECK(within(sum, 1.0, 1e-9));
}

TEST_CASE("a measured bitterness replaces the sum and leaves the shares") {
    Recipe recipe = pale_ale();
    const Beer before = brew_at_middle(recipe);
    recipe.measured.bitterness = Uncertain<Bitterness>{52.0 * ibu, 0.0 * ibu};
    const Beer after = brew_at_middle(recipe);
    CHECK(within(bitterness(after), 52.0, 1e-9));
    REQUIRE(after.bitterness.sources.size() == before.bitterness.sources.size());
    CHECK(after.bitterness.sources[0].share == before.bitterness.sources[0].share);
}

// MEBAK collected methods, European Brewery Convention, Analytica 9.8: reproducibility at 30 IBU is 4.9 IBU
// (95 %), a standard deviation of 1.8.
TEST_CASE("a measured bitterness has the spread of laboratories") {
    Recipe recipe = pale_ale();
    recipe.measured.bitterness = Uncertain<Bitterness>{30.0 * ibu, 0.0 * ibu};
    const auto interval = brew_with(recipe, 256).bitterness.total.interval();
    CHECK(within(0.5 * in(interval.high - interval.low, ibu), 1.8 * 1.2816, 0.15));
}

// Hosom, web reports, 2015..2020: measured values scatter some 20 % about the best prediction.
TEST_CASE("bitterness of a plain boil is about 20 percent uncertain") {
    const auto interval = brew_with(hopped({boiled(magnum(), 20.0, 60.0)}), 256).bitterness.total.interval();
    const double relative = 0.5 * in(interval.high - interval.low, interval.median);
    CHECK(relative / 1.2816 > 0.13);
    CHECK(relative / 1.2816 < 0.28);
}

// Three times as much of the same hops brings three times as much: plain logic.
TEST_CASE("dry hops share what they bring by their mass") {
    const Beer beer =
        brew_at_middle(hopped({dry_hopped(cascade(), 30.0, 4.0, 20), dry_hopped(cascade(), 90.0, 4.0, 21)}));
    double less = 0.0;
    double more = 0.0;
    for (const SourceShare& source : beer.bitterness.sources) {
        less += source.position.line == 20 ? source.share : 0.0;
        more += source.position.line == 21 ? source.share : 0.0;
    }
    CHECK(less > 0.0);
    CHECK(within(more / less, 3.0, 1e-6));
}
