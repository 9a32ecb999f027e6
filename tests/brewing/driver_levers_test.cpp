#include <doctest/doctest.h>

#include <functional>
#include <map>
#include <string>
#include <vector>

#include "tests/support/recipes.hpp"

using namespace entrywise;
using namespace entrywise::testing;

// Moving one thing in a recipe moves what it is known to move, the right way, and nothing else. Directions
// are common practice unless a source stands beside them; the sizes are what a taster would call a change.

namespace {

using Levels = std::map<std::string, double>;

Levels levels_of(const Recipe& recipe) {
    const Beer beer = brew_at_middle(recipe);
    const Drivers& drivers = beer.drivers;
    const auto grams = [](const Traced<Concentration>& driver) {
        return in(driver.total.median(), gram_per_liter);
    };
    return {{"malt", grams(drivers.malt)},
            {"toast", grams(drivers.toast)},
            {"caramel", grams(drivers.caramel)},
            {"roast", grams(drivers.roast)},
            {"smoke", grams(drivers.smoke)},
            {"acid malt", grams(drivers.acid)},
            {"grain body", grams(drivers.grain_body)},
            {"grain head", grams(drivers.grain_head)},
            {"grain haze", grams(drivers.grain_haze)},
            {"lactose", grams(drivers.lactose)},
            {"hop aroma", grams(drivers.hop_aroma)},
            {"hop flavor", grams(drivers.hop_flavor)},
            {"dry hops", grams(drivers.dry_hops)},
            {"spice", grams(drivers.spice)},
            {"salt", grams(drivers.salt)},
            {"ester", drivers.ester.median()},
            {"phenol", drivers.phenol.median()},
            {"diacetyl", drivers.diacetyl.median()},
            {"sulfur", drivers.sulfur.median()},
            {"sour", drivers.sour.median()},
            {"funk", drivers.funk.median()},
            {"fusel", drivers.fusel.median()},
            {"dms", drivers.dms.median()},
            {"adjuncts", drivers.adjunct_share},
            {"cold weeks", drivers.cold_weeks},
            {"flocculation", static_cast<double>(drivers.flocculation)},
            {"fined", drivers.fined ? 1.0 : 0.0},
            {"filtered", drivers.filtered ? 1.0 : 0.0},
            {"nitrogen", drivers.nitrogen ? 1.0 : 0.0},
            {"carbonation", in(beer.carbonation.median(), volume_of_co2)},
            {"bitterness", in(beer.bitterness.total.median(), ibu)}};
}

/// By how much a driver must move at least: up if above zero, down if below.
using Moves = std::map<std::string, double>;

void check_lever(const Recipe& base, const std::function<void(Recipe&)>& pull, const Moves& moves) {
    Recipe changed = base;
    pull(changed);
    const Levels before = levels_of(base);
    const Levels after = levels_of(changed);
    for (const auto& each : before) {
        const std::string& driver = each.first;
        CAPTURE(driver);
        const double moved = after.at(driver) - each.second;
        const auto expected = moves.find(driver);
        CAPTURE(moved);
        if (expected == moves.end()) {
            CHECK(std::abs(moved) < 1e-9);
        } else if (expected->second > 0.0) {
            CHECK(moved >= expected->second);
        } else {
            CHECK(moved <= expected->second);
        }
    }
}

YeastClass weizen_yeast() {
    YeastClass yeast = american_ale();
    yeast.name = "bavarian wheat";
    yeast.ester = {4.0, 5.0};
    yeast.phenol = {4.0, 5.0};
    yeast.phenolic = true;
    return yeast;
}

YeastClass lager_yeast() {
    YeastClass yeast = american_ale();
    yeast.name = "german lager";
    yeast.fermentation = Fermentation::bottom;
    yeast.temperature = {celsius(9.0), celsius(13.0)};
    yeast.ester = {0.0, 1.0};
    yeast.sulfur = {1.0, 2.0};
    yeast.diacetyl = {0.0, 1.0};
    return yeast;
}

YeastClass sour_blend() {
    YeastClass yeast = american_ale();
    yeast.name = "mixed culture";
    yeast.fermentation = Fermentation::mixed;
    yeast.lactic = true;
    yeast.brettanomyces = true;
    return yeast;
}

std::function<void(Recipe&)> with(const ExtraAddition& addition) {
    return [addition](Recipe& recipe) { recipe.extras.push_back(addition); };
}

Fermentable wheat_malt() {
    Fermentable malt = fermentable("wheat malt", FermentableKind::base, 84.0, 5.0, 2.0, 0.82);
    malt.gives.head = 1.0;
    malt.gives.haze = 1.0;
    return malt;
}

Fermentable flaked_oats() {
    Fermentable oats = fermentable("flaked oats", FermentableKind::adjunct, 75.0, 9.0, 1.5, 0.80);
    oats.gives.body = 1.0;
    oats.gives.head = 0.5;
    oats.gives.haze = 0.7;
    return oats;
}

}  // namespace

TEST_CASE("half the yeast gives more esters, hotter alcohol and more diacetyl, double gives fewer esters") {
    check_lever(pale_ale(),
                [](Recipe& recipe) { recipe.yeasts.front().pitch = 0.375 * million_per_milliliter_plato; },
                {{"ester", 0.3}, {"fusel", 0.3}, {"diacetyl", 0.3}});
    check_lever(pale_ale(),
                [](Recipe& recipe) { recipe.yeasts.front().pitch = 1.5 * million_per_milliliter_plato; },
                {{"ester", -0.3}});
    check_lever(pale_ale(),
                [](Recipe& recipe) { recipe.yeasts.front().pitch = 0.75 * million_per_milliliter_plato; },
                {});
}

TEST_CASE("a lager wants twice the yeast of an ale, and smells of sulfur without it") {
    check_lever(fermented_at(11.0, lager_yeast()),
                [](Recipe& recipe) { recipe.yeasts.front().pitch = 0.75 * million_per_milliliter_plato; },
                {{"ester", 0.3}, {"fusel", 0.3}, {"diacetyl", 0.3}, {"sulfur", 0.2}});
}

TEST_CASE("a fermentation above the range of its yeast is fruity and hot") {
    check_lever(pale_ale(), [](Recipe& recipe) { recipe.fermentation_temperature = celsius(25.0); },
                {{"ester", 0.8}, {"fusel", 0.8}});
}

TEST_CASE("the same warmth within the range of another yeast makes nothing hot") {
    CHECK(levels_of(fermented_at(28.0, saison_diastatic())).at("fusel") == 0.0);
}

// Krogerus and Gibson, Journal of the Institute of Brewing 119, 2013: a rest of 1 to 3 days at 14 to 18 °C.
TEST_CASE("a lager taken off its yeast early is buttery, and a warm rest mends it") {
    const Recipe base = fermented_at(11.0, lager_yeast());
    const auto hurry = [](Recipe& recipe) { recipe.fermentation_time = 7.0 * day; };
    check_lever(base, hurry, {{"diacetyl", 1.0}});
    Recipe hurried = base;
    hurry(hurried);
    check_lever(hurried,
                [](Recipe& recipe) {
                    recipe.diacetyl_rest = DiacetylRest{celsius(17.0), 3.0 * day};
                },
                {{"diacetyl", -1.0}});
    check_lever(base, [](Recipe& recipe) { recipe.fermentation_time = 16.0 * day; }, {});
}

TEST_CASE("long lagering takes sulfur and diacetyl away") {
    check_lever(fermented_at(11.0, lager_yeast()),
                [](Recipe& recipe) {
                    recipe.conditioning.time = 10.0 * week;
                    recipe.conditioning.temperature = celsius(1.0);
                },
                {{"sulfur", -0.7}, {"diacetyl", -0.3}, {"cold weeks", 9.9}});
}

// McMurrough et al., Journal of the Institute of Brewing 102, 1996: ferulic acid is freed near 45 °C.
TEST_CASE("a rest at 45 °C gives a weissbier more clove, and a clean ale none") {
    const auto rest = [](Recipe& recipe) {
        recipe.mash.insert(recipe.mash.begin(), {.temperature = celsius(45.0), .time = 20.0 * minute});
    };
    check_lever(fermented_at(19.0, weizen_yeast()), rest, {{"phenol", 0.4}});
    check_lever(pale_ale(), rest, {});
}

TEST_CASE("lactic acid sours, phosphoric acid does not, and the mash takes some up") {
    check_lever(pale_ale(), with(extra("lactic acid", ExtraKind::acid, 60.0, ExtraUse::fermenter)),
                {{"sour", 2.5}});
    check_lever(pale_ale(), with(extra("phosphoric acid", ExtraKind::acid, 20.0)), {});
    check_lever(pale_ale(), with(extra("lactic acid", ExtraKind::acid, 5.0, ExtraUse::mash)), {});
}

TEST_CASE("a mixed culture sours and grows funky with the months") {
    Recipe young = fermented_at(19.0, sour_blend());
    young.conditioning.time = 4.0 * week;
    check_lever(young, [](Recipe& recipe) { recipe.conditioning.time = 40.0 * week; },
                {{"sour", 1.0}, {"funk", 0.8}});
}

// Dickenson, Dimethyl sulphide: its origin and control in brewing, Journal of the Institute of Brewing 85,
// 1979: half an hour of boil leaves some six tenths of the precursor.
TEST_CASE("a boil under a lid keeps dimethyl sulfide, a long one drives it off") {
    Recipe recipe = bare_recipe();
    recipe.grist = {grist(pilsner_malt(), 4.5)};
    const double rolling = levels_of(recipe).at("dms");
    recipe.boil.evaporation = 0.2 * liter_per_hour;
    CHECK(levels_of(recipe).at("dms") > rolling + 2.0);
    recipe.boil.evaporation = 3.0 * liter_per_hour;
    recipe.boil.time = 90.0 * minute;
    CHECK(levels_of(recipe).at("dms") < 0.75 * rolling);
}

TEST_CASE("spice and salt are told apart from what only hardens the water") {
    check_lever(pale_ale(), with(extra("coriander seed", ExtraKind::spice, 15.0)), {{"spice", 0.5}});
    check_lever(pale_ale(), with(extra("cloves", ExtraKind::spice, 4.0)), {{"spice", 0.5}});
    check_lever(pale_ale(), with(extra("sea salt", ExtraKind::salt, 15.0)), {{"salt", 0.5}});
    check_lever(pale_ale(), with(extra("gypsum", ExtraKind::salt, 8.0)), {});
    check_lever(pale_ale(), with(extra("Epsom salt", ExtraKind::salt, 5.0)), {});
}

TEST_CASE("wheat gives head and haze, oats body besides") {
    const auto added = [](const Fermentable& grain) {
        return [grain](Recipe& recipe) {
            recipe.measured.original_gravity = Uncertain<SpecificGravity>{1.054 * specific_gravity, {}};
            recipe.grist.push_back(grist(grain, 1.0));
        };
    };
    Recipe base = pale_ale();
    base.measured.original_gravity = Uncertain<SpecificGravity>{1.054 * specific_gravity, {}};
    const Levels before = levels_of(base);
    Recipe wheat = base;
    added(wheat_malt())(wheat);
    CHECK(levels_of(wheat).at("grain head") > before.at("grain head") + 20.0);
    CHECK(levels_of(wheat).at("grain haze") > before.at("grain haze") + 20.0);
    CHECK(levels_of(wheat).at("grain body") == before.at("grain body"));
    Recipe oats = base;
    added(flaked_oats())(oats);
    CHECK(levels_of(oats).at("grain body") > before.at("grain body") + 20.0);
}

// What makes lambic ropy is thinned by Brettanomyces within months: common practice.
TEST_CASE("a culture with Brettanomyces takes the body of oats and leaves their haze") {
    Recipe oats = pale_ale();
    oats.grist.push_back(grist(flaked_oats(), 1.0));
    REQUIRE(levels_of(oats).at("grain body") > 20.0);
    Recipe soured = oats;
    soured.yeasts.front().yeast = sour_blend();
    CHECK(levels_of(soured).at("grain body") == 0.0);
    CHECK(levels_of(soured).at("grain haze") == levels_of(oats).at("grain haze"));
}

TEST_CASE("finings, filter, cold and a yeast that settles each speak for themselves") {
    check_lever(pale_ale(), with(extra("gelatin", ExtraKind::fining, 2.0, ExtraUse::fermenter)),
                {{"fined", 1.0}});
    check_lever(pale_ale(), [](Recipe& recipe) { recipe.conditioning.filtered = true; }, {{"filtered", 1.0}});
    check_lever(pale_ale(), [](Recipe& recipe) { recipe.conditioning.nitrogen = true; }, {{"nitrogen", 1.0}});
    check_lever(pale_ale(),
                [](Recipe& recipe) { recipe.yeasts.front().yeast.flocculation = Flocculation::high; },
                {{"flocculation", 1.0}});
}

TEST_CASE("months in the warm take the hops out of a beer, and the cold keeps them") {
    const auto kept = [](double days, double degrees) {
        return [=](Recipe& recipe) {
            recipe.keeping.packaged = std::chrono::sys_days(std::chrono::year(2026) / 1 / 10);
            recipe.keeping.judged = *recipe.keeping.packaged + std::chrono::days(static_cast<int>(days));
            recipe.keeping.temperature = celsius(degrees);
        };
    };
    Recipe hoppy = pale_ale();
    hoppy.hops.push_back(dry_hopped(cascade(), 80.0, 4.0));
    const double fresh = levels_of(hoppy).at("hop aroma");
    check_lever(hoppy, kept(0.0, 20.0), {});
    check_lever(hoppy, kept(75.0, 20.0), {{"hop aroma", -0.4 * fresh}, {"hop flavor", -0.3}});
    Recipe cold = hoppy;
    kept(75.0, 3.0)(cold);
    CHECK(levels_of(cold).at("hop aroma") > 0.8 * fresh);
    CHECK(levels_of(cold).at("hop aroma") < fresh);
}
