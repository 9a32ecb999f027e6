#pragma once

#include <cstddef>
#include <string>
#include <utility>

#include "brewing/beer.hpp"
#include "brewing/brew.hpp"
#include "brewing/deviates.hpp"
#include "quantity/quantities.hpp"
#include "recipe/recipe.hpp"

namespace entrywise::testing {

// Ingredients with the analyses that maltsters, hop merchants and yeast makers commonly print (from memory),
// and recipes made of them.

inline Fermentable fermentable(const std::string& name, FermentableKind kind, double extract_percent,
                               double moisture_percent, double degrees_lovibond, double fermentability) {
    Fermentable result;
    result.name = name;
    result.kind = kind;
    result.extract = {extract_percent * percent, 1.5 * percent};
    result.moisture = {moisture_percent * percent, 0.5 * percent};
    result.color = {degrees_lovibond * lovibond, 0.1 * degrees_lovibond * lovibond};
    result.fermentability = {fermentability * fully_attenuated, 0.02 * fully_attenuated};
    return result;
}

inline Fermentable pale_ale_malt() {
    Fermentable malt = fermentable("pale ale malt", FermentableKind::base, 81.0, 3.7, 2.7, 0.82);
    malt.gives.malt = 1.0;
    malt.gives.toast = 0.05;
    malt.gives.dms = 0.3;
    malt.allergens = {"gluten"};
    return malt;
}

inline Fermentable pilsner_malt() {
    Fermentable malt = fermentable("pilsner malt", FermentableKind::base, 81.5, 4.5, 1.8, 0.82);
    malt.gives.malt = 0.85;
    malt.gives.dms = 1.0;
    malt.allergens = {"gluten"};
    return malt;
}

inline Fermentable crystal_malt() {
    Fermentable malt = fermentable("crystal medium", FermentableKind::crystal, 76.5, 5.0, 45.0, 0.62);
    malt.gives.malt = 0.5;
    malt.gives.caramel = 1.0;
    malt.allergens = {"gluten"};
    return malt;
}

inline Fermentable black_malt() {
    Fermentable malt = fermentable("black malt", FermentableKind::roasted, 68.5, 3.0, 510.0, 0.52);
    malt.gives.malt = 0.2;
    malt.gives.roast = 1.0;
    malt.allergens = {"gluten"};
    return malt;
}

inline Fermentable sugar(const std::string& name, double extract_percent, double fermentability) {
    Fermentable result = fermentable(name, FermentableKind::sugar, extract_percent, 0.0, 0.1, fermentability);
    result.extract.half_width = 0.0 * percent;
    result.moisture.half_width = 0.0 * percent;
    result.fermentability.half_width = 0.0 * fully_attenuated;
    result.groups = {"sugar"};
    return result;
}

inline Fermentable sucrose() {
    return sugar("sucrose", 100.0, 1.23);
}

inline Fermentable lactose() {
    Fermentable result = sugar("lactose", 95.0, 0.0);
    result.groups = {"lactose"};
    result.gives.sweet = 1.0;
    result.allergens = {"milk"};
    return result;
}

inline Fermentable pale_malt_extract() {
    Fermentable result =
        fermentable("dry malt extract pale", FermentableKind::malt_extract, 96.0, 0.0, 3.8, 0.77);
    result.moisture.half_width = 0.0 * percent;
    result.gives.malt = 1.1;
    result.allergens = {"gluten"};
    return result;
}

inline Hop hop(const std::string& name, double alpha_percent, double milliliters_of_oil) {
    Hop result;
    result.name = name;
    result.alpha = {alpha_percent * percent, 0.1 * alpha_percent * percent};
    result.oil = {milliliters_of_oil * milliliter_per_100_gram,
                  0.2 * milliliters_of_oil * milliliter_per_100_gram};
    return result;
}

inline Hop cascade() {
    return hop("Cascade", 5.8, 1.2);
}

inline Hop magnum() {
    Hop result = hop("Magnum", 13.0, 2.1);
    result.purpose = HopPurpose::bittering;
    return result;
}

inline YeastClass american_ale() {
    YeastClass yeast;
    yeast.name = "american ale";
    yeast.attenuation = {0.785 * fully_attenuated, 0.035 * fully_attenuated};
    yeast.temperature = {celsius(17.0), celsius(21.0)};
    yeast.ester = {1.0, 2.0};
    yeast.diacetyl = {0.5, 1.0};
    yeast.alcohol_limit = 11.0 * percent_by_volume;
    return yeast;
}

inline YeastClass saison_diastatic() {
    YeastClass yeast;
    yeast.name = "saison diastatic";
    yeast.attenuation = {0.92 * fully_attenuated, 0.05 * fully_attenuated};
    yeast.temperature = {celsius(20.0), celsius(30.0)};
    yeast.ester = {3.0, 5.0};
    yeast.phenol = {3.0, 5.0};
    yeast.alcohol_limit = 12.0 * percent_by_volume;
    yeast.diastatic = true;
    yeast.phenolic = true;
    return yeast;
}

inline GristAddition grist(Fermentable what, double kilograms, GristUse use = GristUse::mash, int line = 0) {
    return {.fermentable = std::move(what), .mass = kilograms * kilogram, .use = use, .position = {line, 5}};
}

inline HopAddition boiled(Hop what, double grams, double minutes, int line = 0) {
    HopAddition addition;
    addition.hop = std::move(what);
    addition.mass = grams * gram;
    addition.time = minutes * minute;
    addition.position = {line, 5};
    return addition;
}

inline HopAddition stood(Hop what, double grams, double minutes, double degrees, int line = 0) {
    HopAddition addition = boiled(std::move(what), grams, minutes, line);
    addition.use = HopUse::whirlpool;
    addition.temperature = celsius(degrees);
    return addition;
}

inline HopAddition dry_hopped(Hop what, double grams, double days, int line = 0) {
    HopAddition addition = boiled(std::move(what), grams, 0.0, line);
    addition.use = HopUse::dry_hop;
    addition.time = days * day;
    return addition;
}

/// Everything stated, so that nothing is assumed; no grist, no hops.
inline Recipe bare_recipe() {
    Recipe recipe;
    recipe.name = "Test Mooring";
    recipe.volume = {20.0 * liter, 0.0 * liter};
    recipe.boil = {.time = 60.0 * minute, .evaporation = 3.0 * liter_per_hour};
    recipe.efficiency = Uncertain<Share>{72.0 * percent, 0.0 * percent};
    recipe.mash = {{.temperature = celsius(66.0), .time = 60.0 * minute}};
    recipe.yeasts = {{.yeast = american_ale(), .attenuation_is_stated = false, .position = {30, 5}}};
    recipe.fermentation_temperature = celsius(19.0);
    recipe.conditioning.carbonation = Uncertain<Carbonation>{2.4 * volume_of_co2, 0.0 * volume_of_co2};
    return recipe;
}

/// A plain pale ale of about 1.054, 5.5 % and 40 IBU.
inline Recipe pale_ale() {
    Recipe recipe = bare_recipe();
    recipe.grist = {grist(pale_ale_malt(), 4.6, GristUse::mash, 10),
                    grist(crystal_malt(), 0.3, GristUse::mash, 11)};
    recipe.hops = {boiled(magnum(), 18.0, 60.0, 20), boiled(cascade(), 20.0, 15.0, 21),
                   boiled(cascade(), 30.0, 0.0, 22)};
    return recipe;
}

inline Recipe carbonated_to(double volumes) {
    Recipe recipe = pale_ale();
    recipe.conditioning.carbonation = Uncertain<Carbonation>{volumes * volume_of_co2, 0.05 * volume_of_co2};
    return recipe;
}

/// So much of something that is neither malt, hops nor yeast.
inline ExtraAddition extra(const std::string& name, ExtraKind kind, double grams,
                           ExtraUse use = ExtraUse::boil) {
    ExtraAddition addition;
    addition.name = name;
    addition.kind = kind;
    addition.mass = grams * gram;
    addition.use = use;
    return addition;
}

/// The pale ale with one thing more in it.
inline Recipe with_extra(const ExtraAddition& addition) {
    Recipe recipe = pale_ale();
    recipe.extras = {addition};
    return recipe;
}

/// The recipe with one rest of an hour.
inline Recipe mashed_at(double degrees, Recipe recipe = pale_ale()) {
    recipe.mash = {{.temperature = celsius(degrees), .time = 60.0 * minute}};
    return recipe;
}

/// The pale ale from another fermenter.
inline Recipe fermented_at(double degrees, const YeastClass& yeast = american_ale()) {
    Recipe recipe = pale_ale();
    recipe.yeasts.front().yeast = yeast;
    recipe.fermentation_temperature = celsius(degrees);
    return recipe;
}

/// A beer of these alone, without hops.
inline Recipe of_grist(std::vector<GristAddition> additions) {
    Recipe recipe = bare_recipe();
    recipe.grist = std::move(additions);
    return recipe;
}

/// So many times as much of everything.
inline Recipe scaled(Recipe recipe, double factor) {
    recipe.volume.middle *= factor;
    *recipe.boil.evaporation *= factor;
    for (GristAddition& addition : recipe.grist) {
        addition.mass *= factor;
    }
    for (HopAddition& addition : recipe.hops) {
        addition.mass *= factor;
    }
    for (ExtraAddition& addition : recipe.extras) {
        *addition.mass *= factor;
    }
    return recipe;
}

/// The beer with every uncertain input at its middle: exact enough to compare two recipes.
inline Beer brew_at_middle(const Recipe& recipe) {
    Deviates middle(1);
    return brew(recipe, middle);
}

/// A wort of 1.050 with these hops.
inline Recipe hopped(std::vector<HopAddition> hops) {
    Recipe recipe = bare_recipe();
    recipe.grist = {grist(pale_ale_malt(), 4.5)};
    recipe.hops = std::move(hops);
    recipe.measured.original_gravity =
        Uncertain<SpecificGravity>{1.050 * specific_gravity, 0.0 * specific_gravity};
    return recipe;
}

inline Beer brew_with(const Recipe& recipe, std::size_t draws) {
    Deviates deviates(draws);
    return brew(recipe, deviates);
}

inline double original_gravity(const Beer& beer) {
    return in(beer.original_gravity.total.median(), specific_gravity);
}
inline double final_gravity(const Beer& beer) {
    return in(beer.final_gravity.median(), specific_gravity);
}
inline double alcohol(const Beer& beer) {
    return in(beer.alcohol.median(), percent_by_volume);
}
inline double bitterness(const Beer& beer) {
    return in(beer.bitterness.total.median(), ibu);
}
inline double color(const Beer& beer) {
    return in(beer.color.total.median(), srm);
}
inline double real_extract_of(const Beer& beer) {
    return in(beer.real_extract.median(), plato);
}

}  // namespace entrywise::testing
