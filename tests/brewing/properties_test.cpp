#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "brewing/brew.hpp"
#include "tests/support/any_recipe.hpp"

using namespace entrywise;
using namespace entrywise::testing;

// What must hold of any recipe, whatever the constants of the models. Each is common practice or plain
// arithmetic, its source beside it.

namespace {

constexpr double rounding = 1e-9;

/// Everything of a beer that is a number, by name.
std::map<std::string, double> numbers_of(const Beer& beer) {
    return {{"original gravity", original_gravity(beer)},
            {"final gravity", final_gravity(beer)},
            {"alcohol", alcohol(beer)},
            {"bitterness", bitterness(beer)},
            {"tasted bitterness", in(beer.tasted_bitterness.median(), ibu)},
            {"color", color(beer)},
            {"carbonation", in(beer.carbonation.median(), volume_of_co2)},
            {"malt", in(beer.drivers.malt.total.median(), gram_per_liter)},
            {"caramel", in(beer.drivers.caramel.total.median(), gram_per_liter)},
            {"roast", in(beer.drivers.roast.total.median(), gram_per_liter)},
            {"lactose", in(beer.drivers.lactose.total.median(), gram_per_liter)},
            {"hop aroma", in(beer.drivers.hop_aroma.total.median(), gram_per_liter)},
            {"hop flavor", in(beer.drivers.hop_flavor.total.median(), gram_per_liter)},
            {"dry hops", in(beer.drivers.dry_hops.total.median(), gram_per_liter)},
            {"ester", beer.drivers.ester.median()},
            {"diacetyl", beer.drivers.diacetyl.median()},
            {"dms", beer.drivers.dms.median()}};
}

void must_agree(const Beer& one, const Beer& other) {
    const auto expected = numbers_of(one);
    for (const auto& [name, value] : numbers_of(other)) {
        RC_LOG() << name << ": " << expected.at(name) << " and " << value << '\n';
        RC_ASSERT(std::abs(value - expected.at(name)) <= rounding * std::max(1.0, std::abs(value)));
    }
}

template <class Line>
void put_one_last(std::vector<Line>& lines) {
    if (!lines.empty()) {
        const auto place = static_cast<std::ptrdiff_t>(*rc::gen::inRange<std::size_t>(0, lines.size()));
        std::rotate(lines.begin() + place, lines.begin() + place + 1, lines.end());
    }
}

double sum_of(const std::vector<SourceShare>& sources) {
    double sum = 0.0;
    for (const SourceShare& source : sources) {
        sum += source.share;
    }
    return sum;
}

}  // namespace

// Common practice. Dry hops are left out: they take bitterness out of very bitter beer (Maye et al., MBAA
// Technical Quarterly 53, 2016).
TEST_CASE("more of a hop that is heated never lowers bitterness") {
    CHECK(holds("bitterness grows with the hops", [] {
        Recipe recipe = *any_recipe();
        RC_PRE(!recipe.hops.empty());
        HopAddition& addition = recipe.hops[*rc::gen::inRange<std::size_t>(0, recipe.hops.size())];
        RC_PRE(addition.use != HopUse::dry_hop);
        const double before = bitterness(brew_at_middle(recipe));
        addition.mass *= any_between(1.0, 20.0);
        RC_ASSERT(bitterness(brew_at_middle(recipe)) >= before - rounding);
    }));
}

// Plain arithmetic: every amount for a liter stays the same.
TEST_CASE("scaling the whole recipe leaves every number") {
    CHECK(holds("numbers do not know the size of the batch", [] {
        const Recipe recipe = *any_recipe();
        must_agree(brew_at_middle(recipe), brew_at_middle(scaled(recipe, any_between(0.1, 40.0))));
    }));
}

TEST_CASE("the order of ingredients is irrelevant, and that of draws too") {
    CHECK(holds("order does not matter", [] {
        const Recipe recipe = *any_recipe();
        Recipe other = recipe;
        put_one_last(other.grist);
        put_one_last(other.hops);
        constexpr std::size_t draws = 64;
        must_agree(brew_with(recipe, draws), brew_with(other, draws));
    }));
}

// Common practice: above 65 C beta-amylase dies sooner the hotter it is (Muller, Journal of the Institute of
// Brewing 97, 1991). Below, it works better the hotter it is.
TEST_CASE("a hotter mash never lowers final gravity") {
    CHECK(holds("final gravity grows with the temperature of the mash", [] {
        const Recipe recipe = *any_recipe();
        const double degrees = any_between(65.0, 78.0);
        const double hotter = degrees + any_between(0.0, 80.0 - degrees);
        RC_ASSERT(final_gravity(brew_at_middle(mashed_at(hotter, recipe))) >=
                  final_gravity(brew_at_middle(mashed_at(degrees, recipe))) - rounding);
    }));
}

// Balling, Die sacharometrische Bierprobe, 1843: 2.0665 g of extract give 1 g of alcohol, 0.9565 g of carbon
// dioxide and 0.11 g of yeast. Density of ethanol at 20 C, 0.78924: OIML R 22, International Alcoholometric
// Tables, 1973. Held to 1 % of the extract, as the density of the beer is taken from its final gravity.
TEST_CASE("extract is conserved: what is not left was turned into alcohol, gas and yeast") {
    CHECK(holds("the mass of extract adds up", [] {
        const Beer beer = brew_at_middle(*any_recipe());
        const double by_weight = alcohol(beer) * 0.78924 / (0.99820 * final_gravity(beer));
        const double left = real_extract_of(beer);
        const double extract = in(beer.original_extract.median(), plato);
        const double again = 100.0 * (2.0665 * by_weight + left) / (100.0 + (0.9565 + 0.11) * by_weight);
        RC_LOG() << "original extract " << extract << ", from beer " << again << '\n';
        RC_ASSERT(std::abs(again - extract) <= 0.01 * extract);
    }));
}

TEST_CASE("what comes from single ingredients adds up to the whole, and not to more") {
    CHECK(holds("shares add up", [] {
        const Beer beer = brew_at_middle(*any_recipe());
        RC_ASSERT(std::abs(sum_of(beer.original_gravity.sources) - 1.0) <= rounding);
        RC_ASSERT(sum_of(beer.bitterness.sources) <= 1.0 + rounding);
        RC_ASSERT(sum_of(beer.color.sources) <= 1.0 + rounding);
    }));
}

// Common practice: more extract in the same volume is more gravity and, with the same yeast, more alcohol.
TEST_CASE("more malt never lowers gravity, alcohol or color") {
    CHECK(holds("strength and color grow with the malt", [] {
        Recipe recipe = *any_recipe();
        const Beer before = brew_at_middle(recipe);
        recipe.grist.push_back(grist(pale_ale_malt(), recipe.volume.middle / liter * any_between(0.0, 0.1)));
        const Beer after = brew_at_middle(recipe);
        RC_ASSERT(original_gravity(after) >= original_gravity(before) - rounding);
        RC_ASSERT(color(after) >= color(before) - rounding);
    }));
}
