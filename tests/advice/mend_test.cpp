#include "advice/mend.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <variant>

#include "advice/check.hpp"
#include "advice/numbers_kept.hpp"
#include "reading/pantry.hpp"
#include "tests/support/demo.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/judging.hpp"
#include "tests/support/off_style.hpp"
#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Mending mended(const Recipe& recipe, const Style& style, MendingWish wish = {},
               std::vector<Recipe> other_beers = {}) {
    const MendingMeans means{pantry_of(style, usual_library().ingredients()), std::move(other_beers)};
    return mend(recipe, style, usual_handbook(), means, wish);
}

MendingWish of_the_finished_beer() {
    return {.stage = Stage::brewed, .target = 2.0};
}

/// The points at risk that a whole check of the recipe tells, apart from how it was mended.
double checked_at_risk(const Recipe& recipe, const Style& style) {
    return check(recipe, style, usual_handbook()).sheet.total.median;
}

bool changes(const Proposal& proposal, const std::string& part) {
    return std::any_of(proposal.changes.begin(), proposal.changes.end(),
                       [&](const Change& change) { return change.what.find(part) != std::string::npos; });
}

Mass hops_at(const Recipe& recipe, HopUse use) {
    Mass mass;
    for (const HopAddition& addition : recipe.hops) {
        mass += addition.use == use ? addition.mass : Mass();
    }
    return mass;
}

/// Hops that keep their aroma: on the beer, or boiled for a quarter of an hour at most (common practice).
Mass late_hops_in(const Recipe& recipe) {
    Mass mass;
    for (const HopAddition& addition : recipe.hops) {
        const bool late = addition.use == HopUse::dry_hop || *addition.time <= 15.0 * minute;
        mass += late ? addition.mass : Mass();
    }
    return mass;
}

/// Hops times the minutes that they are boiled: what bitterness comes from (common practice).
double bittering_work(const Recipe& recipe) {
    double work = 0.0;
    for (const HopAddition& addition : recipe.hops) {
        work += addition.use == HopUse::boil ? in(addition.mass, gram) * in(*addition.time, minute) : 0.0;
    }
    return work;
}

/// A proposal is there, holds when it is checked anew, and stays within four changes.
const Proposal& first_that_holds(const Mending& mending) {
    REQUIRE(!mending.proposals.empty());
    for (const Proposal& proposal : mending.proposals) {
        CHECK(proposal.changes.size() >= 1);
        CHECK(proposal.changes.size() <= 4);
        CHECK(checked_at_risk(proposal.attempt.recipe, mending.style) < mending.target + 0.05);
    }
    return mending.proposals.front();
}

}  // namespace

TEST_CASE("a too bitter beer is mended by fewer or shorter boiled hops, and is less bitter then") {
    Recipe recipe = pale_ale();
    recipe.hops.front().mass = 60.0 * gram;
    const Mending mending = mended(recipe, guide_style("18B"));
    REQUIRE(mending.sheet.total.median > 2.0);
    const Proposal& proposal = first_that_holds(mending);
    CHECK(bittering_work(proposal.attempt.recipe) < bittering_work(recipe));
    CHECK(bitterness(proposal.beer) < bitterness(mending.beer));
    CHECK(!proposal.brings_in_new);
}

TEST_CASE("a beer that lacks hop aroma is given late or dry hops") {
    Recipe recipe = pale_ale();
    recipe.hops.resize(1);
    const Mending mending = mended(recipe, guide_style("18B"));
    const Proposal& proposal = first_that_holds(mending);
    const Recipe& now = proposal.attempt.recipe;
    CHECK(late_hops_in(now) > late_hops_in(recipe));
    CHECK(proposal.beer.drivers.hop_aroma.total.median() > mending.beer.drivers.hop_aroma.total.median());
}

TEST_CASE("a beer too strong is made from less, and what is scaled together is one change") {
    Recipe recipe = pale_ale();
    scale_grist(recipe, 1.6);
    const Mending mending = mended(recipe, guide_style("18B"));
    const Proposal& proposal = first_that_holds(mending);
    CHECK(alcohol(proposal.beer) < alcohol(mending.beer) - 0.5);
    const bool together =
        std::any_of(mending.proposals.begin(), mending.proposals.end(), [](const Proposal& each) {
            return changes(each, "fermentables together") || changes(each, "volume of wort");
        });
    CHECK(together);
}

// Common practice: lager yeast ferments at about 8 to 14 °C, and no yeast is led beyond what it is made for.
TEST_CASE("a lager fermented hot is fermented cool, never beyond what its yeast is at home in") {
    Recipe recipe = *read_recipe(std::string(ENTRYWISE_SOURCE_DIR) + "/recipes/night-watch.yaml",
                                 usual_library().ingredients());
    recipe.fermentation_temperature = celsius(26.0);
    const Mending mending = mended(recipe, guide_style("8B"));
    const Proposal& proposal = first_that_holds(mending);
    CHECK(changes(proposal, "fermentation temperature"));
    for (const Proposal& each : mending.proposals) {
        const double degrees = in_celsius(*each.attempt.recipe.fermentation_temperature);
        const bool bottom = each.attempt.recipe.yeasts.front().yeast.fermentation == Fermentation::bottom;
        CHECK((!bottom || degrees <= 18.0));
    }
}

// Common practice: common beer bottles bear 4 volumes at most.
TEST_CASE("a flat wheat beer is carbonated, and stays below what bottles bear") {
    const Recipe recipe = *read_recipe(std::string(ENTRYWISE_SOURCE_DIR) + "/recipes/low-water.yaml",
                                       usual_library().ingredients());
    for (const MendingWish& wish : {MendingWish(), of_the_finished_beer()}) {
        const Mending mending = mended(recipe, guide_style("10A"), wish);
        const Proposal& proposal = first_that_holds(mending);
        CHECK(changes(proposal, "carbonation"));
        CHECK(proposal.beer.carbonation.interval().high < 4.0 * volume_of_co2);
        CHECK(proposal.beer.carbonation.median() > 2.0 * volume_of_co2);
    }
}

TEST_CASE("a yeast that does not belong is changed for one that is customary, at home in its temperature") {
    Recipe recipe = pale_ale();
    ferment_with(recipe, usual_library(), "bavarian wheat");
    const Style style = guide_style("18B");
    const Mending mending = mended(recipe, style);
    const Proposal& proposal = first_that_holds(mending);
    const YeastClass& yeast = proposal.attempt.recipe.yeasts.front().yeast;
    CHECK(changes(proposal, "yeast"));
    const auto& typical = style.custom.yeast_typical;
    const auto& possible = style.custom.yeast_possible;
    CHECK((std::count(typical.begin(), typical.end(), yeast.name) > 0 ||
           std::count(possible.begin(), possible.end(), yeast.name) > 0));
    CHECK(*proposal.attempt.recipe.fermentation_temperature >= yeast.temperature.low);
    CHECK(*proposal.attempt.recipe.fermentation_temperature <= yeast.temperature.high);
}

// Common practice: an India pale ale brought in by brewing it as weak as a pale ale is none any more.
TEST_CASE("no way to mend takes the numbers of the style further out where another keeps them") {
    for (const char* name : {"slack-tide", "harbor-master", "first-ferry"}) {
        CAPTURE(name);
        const Mending mending = mended(demo(name), guide_style(demo(name).style->code));
        first_that_holds(mending);
        for (const Proposal& proposal : mending.proposals) {
            CHECK(numbers_are_kept(mending.style, mending.beer, proposal.beer));
        }
    }
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021: a dark mild has 3.0 to 3.8 % and 1.030
// to 1.038.
TEST_CASE("a change goes on into the numbers of the style, though the points are few before") {
    const Mending mending = mended(demo("harbor-master"), guide_style("13A"));
    const Proposal& proposal = first_that_holds(mending);
    CHECK(proposal.changes.size() == 1);
    CHECK(in(proposal.beer.alcohol.median(), percent_by_volume) < 3.85);
    CHECK(in(proposal.beer.alcohol.median(), percent_by_volume) > 3.0);
    CHECK(in(proposal.beer.original_gravity.total.median(), specific_gravity) < 1.0385);
    CHECK(in(proposal.beer.original_gravity.total.median(), specific_gravity) > 1.030);
}

TEST_CASE("a beer in style is left as it is") {
    const Mending mending = mended(pale_ale(), guide_style("18B"), {.stage = Stage::recipe, .target = 45.0});
    CHECK(mending.is_in_already());
    CHECK(mending.proposals.empty());
}

TEST_CASE("the same recipe is mended the same way each time") {
    Recipe recipe = pale_ale();
    recipe.hops.front().mass = 60.0 * gram;
    const Mending once = mended(recipe, guide_style("18B"));
    const Mending again = mended(recipe, guide_style("18B"));
    REQUIRE(once.proposals.size() == again.proposals.size());
    for (std::size_t index = 0; index < once.proposals.size(); ++index) {
        CHECK(once.proposals[index].changes == again.proposals[index].changes);
        CHECK(once.proposals[index].sheet.total.median == again.proposals[index].sheet.total.median);
    }
}

TEST_CASE("amounts are those that a brewer weighs") {
    Recipe recipe = pale_ale();
    scale_grist(recipe, 1.6);
    recipe.hops.front().mass = 70.0 * gram;
    for (const Proposal& proposal : mended(recipe, guide_style("18B")).proposals) {
        for (const Change& change : proposal.changes) {
            const double* to = std::get_if<double>(&change.to);
            if (to != nullptr && change.unit == "g") {
                CHECK(within(*to, std::round(*to), 1e-9));
            }
            if (to != nullptr && (change.unit == "min" || change.unit == "°C")) {
                CHECK(within(*to, std::round(*to), 1e-9));
            }
        }
    }
}

TEST_CASE("what was measured and is moved by the changes is dropped, what is not stays") {
    Recipe recipe = pale_ale();
    scale_grist(recipe, 1.6);
    recipe.measured.original_gravity = {1.085 * specific_gravity, {}};
    recipe.measured.final_gravity = {1.018 * specific_gravity, {}};
    const Mending strong = mended(recipe, guide_style("18B"));
    int thinned = 0;
    for (const Proposal& proposal : strong.proposals) {
        if (changes(proposal, "all fermentables") || changes(proposal, "volume")) {
            CHECK(!proposal.attempt.recipe.measured.original_gravity);
            CHECK(std::count(proposal.no_longer_measured.begin(), proposal.no_longer_measured.end(),
                             "original gravity") == 1);
            ++thinned;
        }
    }
    CHECK(thinned > 0);
    Recipe flat = *read_recipe(std::string(ENTRYWISE_SOURCE_DIR) + "/recipes/low-water.yaml",
                               usual_library().ingredients());
    flat.measured.original_gravity = {1.050 * specific_gravity, {}};
    const Mending mending = mended(flat, guide_style("10A"));
    REQUIRE(!mending.proposals.empty());
    const Proposal& proposal = mending.proposals.front();
    REQUIRE(proposal.changes.size() == 1);
    REQUIRE(changes(proposal, "carbonation"));
    CHECK(proposal.attempt.recipe.measured.original_gravity);
    CHECK(proposal.no_longer_measured.empty());
}

TEST_CASE("a finished beer too strong is thinned with water: everything in it by the same part") {
    Recipe recipe = pale_ale();
    scale_grist(recipe, 1.4);
    const Style style = style_that_expects(Attribute::flavor_alcohol, 0.0, 2.0);
    Style narrow = style;
    narrow.ranges.alcohol = Range<AlcoholByVolume>{4.5 * percent_by_volume, 5.5 * percent_by_volume};
    const Mending mending = mended(recipe, narrow, {.stage = Stage::brewed, .target = 1.0});
    REQUIRE(mending.sheet.total.median > 1.0);
    REQUIRE(!mending.proposals.empty());
    const Proposal& proposal = mending.proposals.front();
    REQUIRE(changes(proposal, "water"));
    const double part = in(proposal.attempt.water, whole);
    CHECK(part > 0.0);
    CHECK(part <= 0.25);
    CHECK(within(alcohol(proposal.beer) / alcohol(mending.beer), 1.0 - part, 0.01));
    CHECK(within(bitterness(proposal.beer) / bitterness(mending.beer), 1.0 - part, 0.02));
}

TEST_CASE("a finished beer with too little bitterness is blended with a bitter one, the share solved") {
    Recipe mild = pale_ale();
    mild.hops = {boiled(magnum(), 8.0, 60.0, 20)};
    Recipe harsh = pale_ale();
    harsh.name = "Harsh";
    harsh.hops = {boiled(magnum(), 60.0, 60.0, 20)};
    Style style = style_that_expects(Attribute::flavor_bitterness, 3.0, 4.0);
    style.ranges.bitterness = Range<Bitterness>{35.0 * ibu, 50.0 * ibu};
    const Mending mending = mended(mild, style, {.stage = Stage::brewed, .target = 1.0}, {harsh});
    REQUIRE(mending.sheet.total.median > 1.0);
    REQUIRE(!mending.proposals.empty());
    const Proposal& proposal = mending.proposals.front();
    CHECK(changes(proposal, "Harsh"));
    REQUIRE(proposal.attempt.blend);
    CHECK(proposal.attempt.blend->share > 0.05 * whole);
    CHECK(proposal.attempt.blend->share < 0.95 * whole);
    CHECK(bitterness(proposal.beer) > bitterness(mending.beer));
    CHECK(bitterness(proposal.beer) < bitterness(brew_with(harsh, 512)));
}

// Common practice: what the mash and the kettle gave, no cellar takes away.
TEST_CASE("a roasty finished beer has no mending, and nothing is made up") {
    Recipe recipe = pale_ale();
    recipe.grist.push_back(grist(black_malt(), 0.5, GristUse::mash, 12));
    const Mending mending = mended(recipe, guide_style("18B"), of_the_finished_beer());
    CHECK(mending.sheet.total.median > 5.0);
    CHECK(mending.proposals.empty());
}

TEST_CASE("a finished beer is mended by nothing that belongs before the fermenter is empty") {
    Recipe recipe = pale_ale();
    recipe.hops.resize(1);
    const Mending mending = mended(recipe, guide_style("18B"), of_the_finished_beer());
    REQUIRE(!mending.proposals.empty());
    for (const Proposal& proposal : mending.proposals) {
        const Recipe& now = proposal.attempt.recipe;
        CHECK(hops_at(now, HopUse::boil) == hops_at(recipe, HopUse::boil));
        CHECK(now.grist.size() == recipe.grist.size());
        CHECK(now.mash.front().temperature == recipe.mash.front().temperature);
        CHECK(now.yeasts.front().yeast.name == recipe.yeasts.front().yeast.name);
    }
    CHECK(hops_at(mending.proposals.front().attempt.recipe, HopUse::dry_hop) > Mass());
}

TEST_CASE("recipes pushed out of style are brought in, nearly all by three changes at most") {
    const std::vector<OffStyle> all = off_style_recipes(usual_library(), usual_handbook(), 48);
    REQUIRE(all.size() == 48);
    int few = 0;
    int tried = 0;
    for (std::size_t index = 0; index < all.size(); index += 6) {
        const Mending mending = mended(all[index].recipe, all[index].style);
        INFO(all[index].recipe.name, ", ", all[index].push);
        const Proposal& proposal = first_that_holds(mending);
        CHECK(mending.target == mending.wanted);
        few += proposal.changes.size() <= 3 ? 1 : 0;
        ++tried;
    }
    CHECK(few * 10 >= tried * 9);
}
