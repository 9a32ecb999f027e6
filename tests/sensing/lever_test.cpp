#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>
#include <vector>

#include "reading/library.hpp"
#include "sensing/sense.hpp"
#include "tests/support/palate.hpp"
#include "tests/support/recipes.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

using enum Attribute;

const KnownIngredients& known() {
    static const KnownIngredients ingredients(embedded_documents(), {});
    return ingredients;
}

Fermentable malt_named(const std::string& name) {
    const auto malt = known().fermentable(name);
    REQUIRE(malt);
    return *malt;
}

YeastClass yeast_named(const std::string& name) {
    const auto yeast = known().yeast(name);
    REQUIRE(yeast);
    return *yeast;
}

/// A pale ale of ingredients as the tables have them, with everything stated.
Recipe usual_recipe() {
    Recipe recipe = bare_recipe();
    recipe.grist = {grist(malt_named("pale ale malt"), 4.6), grist(malt_named("crystal medium"), 0.3)};
    recipe.hops = {boiled(magnum(), 18.0, 60.0), boiled(cascade(), 20.0, 15.0), boiled(cascade(), 30.0, 5.0)};
    recipe.yeasts = {{.yeast = yeast_named("american ale"), .attenuation_is_stated = false, .position = {}}};
    recipe.conditioning.time = 21.0 * day;
    recipe.conditioning.temperature = celsius(4.0);
    return recipe;
}

ByAttribute<double> levels_of(const Recipe& recipe) {
    Deviates middle(1);
    const Profile profile = sense(brew(recipe, middle), usual_palate(), middle);
    ByAttribute<double> levels;
    for (const Attribute attribute : all_attributes()) {
        levels[attribute] = profile.level[attribute].median();
    }
    return levels;
}

/// A gram of base malt makes room for each gram of another, so that strength stays.
void swap_base_for(Recipe& recipe, const std::string& malt, double kilograms) {
    recipe.grist[0].mass -= kilograms * kilogram;
    recipe.grist.push_back(grist(malt_named(malt), kilograms));
}

void add_extra(Recipe& recipe, const std::string& name, ExtraKind kind, double grams) {
    ExtraAddition extra;
    extra.name = name;
    extra.kind = kind;
    extra.mass = grams * gram;
    extra.time = 5.0 * minute;
    recipe.extras.push_back(extra);
}

void ferment_with(Recipe& recipe, const std::string& yeast) {
    recipe.yeasts[0].yeast = yeast_named(yeast);
    recipe.fermentation_temperature =
        recipe.yeasts[0].yeast.temperature.low +
        0.5 * (recipe.yeasts[0].yeast.temperature.high - recipe.yeasts[0].yeast.temperature.low);
}

/// What a brewer turns, the attributes that must follow by at least so many steps, and those that may come
/// along. All others must hold still.
struct Lever {
    std::string name;
    std::function<void(Recipe&)> turn;
    std::vector<std::pair<Attribute, double>> follow;
    std::vector<Attribute> may_come_along;
};

/// Less than this is no move: half of what a taster tells.
constexpr double still = 0.35;

const std::vector<Lever>& levers() {
    static const std::vector<Lever> all{
        {"two kilograms of Munich malt for base malt",
         [](Recipe& recipe) { swap_base_for(recipe, "munich malt dark", 2.0); },
         {{aroma_malt, 0.5}, {flavor_malt, 0.5}, {aroma_toast, 0.8}, {flavor_toast, 0.8}},
         {mouthfeel_body, flavor_finish, flavor_sweetness}},
        {"half a kilogram of crystal malt for base malt",
         [](Recipe& recipe) { swap_base_for(recipe, "crystal medium", 0.5); },
         {{aroma_caramel, 0.8}, {flavor_caramel, 1.0}},
         {mouthfeel_creaminess, aroma_malt, flavor_malt, mouthfeel_body, flavor_finish, flavor_sweetness}},
        {"half a kilogram of biscuit malt for base malt",
         [](Recipe& recipe) { swap_base_for(recipe, "biscuit malt", 0.5); },
         {{aroma_toast, 1.0}, {flavor_toast, 1.0}},
         {aroma_malt, flavor_malt}},
        {"300 g of black malt for base malt",
         [](Recipe& recipe) { swap_base_for(recipe, "black malt", 0.3); },
         {{aroma_roast, 2.0}, {flavor_roast, 2.0}},
         {aroma_malt, flavor_malt, flavor_bitterness}},
        {"two kilograms of beech-smoked malt for base malt",
         [](Recipe& recipe) { swap_base_for(recipe, "beech-smoked malt", 2.0); },
         {{aroma_smoke, 2.0}, {flavor_smoke, 2.0}},
         {}},
        {"100 g of dry hops",
         [](Recipe& recipe) { recipe.hops.push_back(dry_hopped(cascade(), 100.0, 4.0)); },
         {{aroma_hop, 1.5}, {flavor_hop, 1.0}},
         {flavor_bitterness, flavor_balance, appearance_clarity}},
        {"twice the bittering hops",
         [](Recipe& recipe) { recipe.hops[0].mass *= 2.0; },
         {{flavor_bitterness, 1.0}, {flavor_balance, 1.0}},
         {aroma_malt, flavor_malt, flavor_finish, appearance_head_retention, flavor_sweetness}},
        {"six degrees warmer fermentation",
         [](Recipe& recipe) { recipe.fermentation_temperature = celsius(25.0); },
         {{aroma_ester, 0.7}, {flavor_ester, 0.7}},
         {aroma_alcohol, flavor_alcohol, mouthfeel_warmth, aroma_diacetyl, flavor_diacetyl}},
        {"wheat beer yeast",
         [](Recipe& recipe) { ferment_with(recipe, "bavarian wheat"); },
         {{aroma_phenol, 2.0}, {flavor_phenol, 2.0}, {aroma_ester, 1.0}, {flavor_ester, 1.0}},
         {appearance_clarity, aroma_sulfur, flavor_finish, flavor_sweetness, mouthfeel_body, aroma_diacetyl,
          flavor_diacetyl}},
        {"a kilogram and a half of sugar on top",
         [](Recipe& recipe) { recipe.grist.push_back(grist(sucrose(), 1.5, GristUse::boil)); },
         {{aroma_alcohol, 1.0}, {flavor_alcohol, 1.2}, {mouthfeel_warmth, 1.2}},
         {flavor_finish, flavor_sweetness, flavor_bitterness, flavor_balance, aroma_malt, flavor_malt,
          mouthfeel_body, appearance_head_retention, aroma_ester, flavor_ester, mouthfeel_creaminess,
          aroma_caramel, flavor_caramel}},
        {"lactic culture beside the yeast",
         [](Recipe& recipe) {
             recipe.yeasts.push_back(
                 {.yeast = yeast_named("lactic culture"), .attenuation_is_stated = false, .position = {}});
         },
         {{aroma_sour, 2.5}, {flavor_sour, 2.5}},
         {flavor_bitterness, aroma_malt, flavor_malt, flavor_finish, flavor_sweetness,
          appearance_head_retention}},
        {"Brettanomyces beside the yeast",
         [](Recipe& recipe) {
             recipe.yeasts.push_back(
                 {.yeast = yeast_named("brettanomyces"), .attenuation_is_stated = false, .position = {}});
         },
         {{aroma_funk, 2.0}, {flavor_funk, 2.0}},
         {flavor_finish, flavor_sweetness, mouthfeel_body, aroma_malt, flavor_malt, aroma_alcohol,
          flavor_alcohol, mouthfeel_warmth, aroma_ester, flavor_ester, aroma_phenol, flavor_phenol,
          flavor_balance, mouthfeel_creaminess, aroma_sour, flavor_sour}},
        {"a Scottish yeast that leaves diacetyl",
         [](Recipe& recipe) { ferment_with(recipe, "scottish ale"); },
         {{aroma_diacetyl, 0.3}, {flavor_diacetyl, 0.3}},
         {aroma_ester, flavor_ester, appearance_clarity, flavor_finish, flavor_sweetness, mouthfeel_body,
          aroma_malt, flavor_malt, flavor_balance, aroma_alcohol, flavor_alcohol, mouthfeel_warmth}},
        {"lager yeast",
         [](Recipe& recipe) { ferment_with(recipe, "german lager"); },
         {{aroma_sulfur, 0.3}},
         {aroma_ester, flavor_ester, appearance_clarity, aroma_diacetyl, flavor_diacetyl, flavor_finish,
          flavor_sweetness}},
        {"Pilsner malt boiled for a quarter of an hour",
         [](Recipe& recipe) {
             recipe.grist[0].fermentable = malt_named("pilsner malt");
             recipe.boil.time = 15.0 * minute;
             recipe.hops = {boiled(magnum(), 18.0, 15.0)};
         },
         {{aroma_dms, 1.0}},
         {aroma_toast, flavor_toast, flavor_bitterness, flavor_balance, aroma_hop, flavor_hop, aroma_malt,
          flavor_malt, appearance_head_retention, flavor_finish, flavor_sweetness}},
        {"a cloudy yeast on much wheat",
         [](Recipe& recipe) {
             swap_base_for(recipe, "wheat malt", 2.2);
             recipe.yeasts[0].yeast.flocculation = Flocculation::low;
         },
         {{appearance_clarity, -1.0}, {appearance_head_retention, 0.5}},
         {aroma_toast, flavor_toast, appearance_head_size, mouthfeel_body, mouthfeel_creaminess}},
        {"a volume more of carbonation",
         [](Recipe& recipe) { recipe.conditioning.carbonation->middle = 3.4 * volume_of_co2; },
         {{mouthfeel_carbonation, 1.5}, {appearance_head_size, 1.0}},
         {mouthfeel_body, flavor_finish, flavor_sweetness, flavor_balance, appearance_head_retention,
          mouthfeel_creaminess}},
        {"half a kilogram of lactose",
         [](Recipe& recipe) { recipe.grist.push_back(grist(lactose(), 0.5, GristUse::boil)); },
         {{flavor_sweetness, 1.0}, {flavor_finish, 0.8}},
         {mouthfeel_body, mouthfeel_creaminess, flavor_bitterness, flavor_balance, aroma_malt, flavor_malt}},
        {"20 g of sea salt",
         [](Recipe& recipe) { add_extra(recipe, "sea salt", ExtraKind::salt, 20.0); },
         {{flavor_salt, 1.0}},
         {}},
        {"25 g of coriander",
         [](Recipe& recipe) { add_extra(recipe, "coriander", ExtraKind::spice, 25.0); },
         {{flavor_spice, 1.0}},
         {}},
        {"a mash of 72 degrees",
         [](Recipe& recipe) { recipe.mash[0].temperature = celsius(72.0); },
         {{mouthfeel_body, 0.5}, {flavor_finish, 0.5}},
         {mouthfeel_creaminess, flavor_sweetness, aroma_malt, flavor_malt, aroma_alcohol, flavor_alcohol,
          mouthfeel_warmth, flavor_balance, flavor_bitterness}},
        {"nitrogen",
         [](Recipe& recipe) { recipe.conditioning.nitrogen = true; },
         {{mouthfeel_creaminess, 1.0}},
         {mouthfeel_body}},
        {"a kilogram of black malt for base malt",
         [](Recipe& recipe) { swap_base_for(recipe, "black malt", 1.0); },
         {{mouthfeel_astringency, 1.0}, {flavor_roast, 3.0}},
         {aroma_toast, flavor_toast, aroma_roast, aroma_malt, flavor_malt, flavor_bitterness, mouthfeel_body,
          flavor_finish, flavor_sweetness, flavor_balance, mouthfeel_creaminess, aroma_alcohol,
          flavor_alcohol, mouthfeel_warmth}},
    };
    return all;
}

bool is_listed(const Lever& lever, Attribute attribute) {
    return std::find(lever.may_come_along.begin(), lever.may_come_along.end(), attribute) !=
               lever.may_come_along.end() ||
           std::any_of(lever.follow.begin(), lever.follow.end(),
                       [&](const auto& follower) { return follower.first == attribute; });
}

}  // namespace

// Common practice of brewing: what each of these does to a beer, and what it leaves alone.
TEST_CASE("each lever of a recipe moves what brewers turn it for, and the rest holds still") {
    const ByAttribute<double> before = levels_of(usual_recipe());
    for (const Lever& lever : levers()) {
        Recipe recipe = usual_recipe();
        lever.turn(recipe);
        const ByAttribute<double> after = levels_of(recipe);
        for (const auto& follows : lever.follow) {
            const Attribute attribute = follows.first;
            const double least = follows.second;
            CAPTURE(lever.name);
            CAPTURE(std::string(word_of(section_of(attribute))) + " " + std::string(word_of(attribute)));
            CAPTURE(before[attribute]);
            CAPTURE(after[attribute]);
            const double move = after[attribute] - before[attribute];
            CHECK((least > 0.0 ? move >= least : move <= least));
        }
        for (const Attribute attribute : all_attributes()) {
            const double move = after[attribute] - before[attribute];
            CAPTURE(lever.name);
            CAPTURE(std::string(word_of(section_of(attribute))) + " " + std::string(word_of(attribute)));
            CAPTURE(move);
            CHECK((is_listed(lever, attribute) || std::abs(move) < still));
        }
    }
}

TEST_CASE("each attribute has a lever that moves it") {
    for (const Attribute attribute : all_attributes()) {
        CAPTURE(std::string(word_of(section_of(attribute))) + " " + std::string(word_of(attribute)));
        CHECK(std::any_of(levers().begin(), levers().end(), [&](const Lever& lever) {
            return std::any_of(lever.follow.begin(), lever.follow.end(),
                               [&](const auto& follower) { return follower.first == attribute; });
        }));
    }
}
