#include "sensing/sense.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "tests/support/palate.hpp"
#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

constexpr std::size_t draws = 64;

Profile sensed(const Recipe& recipe) {
    Deviates deviates(draws);
    const Beer beer = brew(recipe, deviates);
    return sense(beer, usual_palate(), deviates);
}

double level_of(const Profile& profile, Attribute attribute) {
    return profile.level[attribute].median();
}

double highest_on(Attribute attribute) {
    return static_cast<double>(words_of(scale_of(attribute)).size() - 1);
}

/// Random drivers far beyond what any beer has, from a fixed seed.
class RandomBeer {
  public:
    explicit RandomBeer(unsigned seed) : random_(seed) {}

    Beer next() {
        Beer beer;
        beer.original_gravity.total = many(1.0, 1.2, specific_gravity);
        beer.final_gravity = many(0.985, 1.1, specific_gravity);
        beer.original_extract = many(0.0, 40.0, plato);
        beer.real_extract = many(-2.0, 20.0, plato);
        beer.apparent_attenuation = many(0.0, 1.3, fully_attenuated);
        beer.alcohol = many(0.0, 25.0, percent_by_volume);
        beer.bitterness.total = many(0.0, 300.0, ibu);
        beer.tasted_bitterness = beer.bitterness.total;
        beer.color.total = many(0.5, 120.0, srm);
        beer.carbonation = many(0.0, 8.0, volume_of_co2);
        for (Traced<Concentration>* driver : concentrations(beer.drivers)) {
            driver->total = many(0.0, 400.0, gram_per_liter);
        }
        for (Estimate<double>* driver : levels(beer.drivers)) {
            *driver = many(0.0, 7.0, 1.0);
        }
        beer.drivers.dms = many(0.0, 50.0, 1.0);
        beer.drivers.adjunct_share = between(0.0, 1.0);
        beer.drivers.cold_weeks = between(0.0, 40.0);
        beer.drivers.nitrogen = between(0.0, 1.0) < 0.5;
        beer.drivers.filtered = between(0.0, 1.0) < 0.5;
        beer.drivers.haze_positive = between(0.0, 1.0) < 0.5;
        return beer;
    }

    static std::vector<Traced<Concentration>*> concentrations(Drivers& drivers) {
        return {&drivers.malt,          &drivers.toast,    &drivers.caramel,    &drivers.roast,
                &drivers.smoke,         &drivers.acid,     &drivers.grain_body, &drivers.grain_head,
                &drivers.grain_haze,    &drivers.lactose,  &drivers.hop_aroma,  &drivers.hop_flavor,
                &drivers.dms_precursor, &drivers.dry_hops, &drivers.spice,      &drivers.salt};
    }

    static std::vector<Estimate<double>*> levels(Drivers& drivers) {
        return {&drivers.ester, &drivers.phenol, &drivers.diacetyl, &drivers.sulfur,
                &drivers.sour,  &drivers.funk,   &drivers.fusel};
    }

  private:
    double between(double low, double high) {
        // Not a standard distribution: those may differ from one library to the next.
        return low + (high - low) * static_cast<double>(random_()) / static_cast<double>(std::mt19937::max());
    }

    template <class Quantity>
    Estimate<Quantity> many(double low, double high, Quantity unit) {
        std::vector<Quantity> values;
        for (std::size_t draw = 0; draw < 4; ++draw) {
            values.push_back(between(low, high) * unit);
        }
        return Estimate<Quantity>(std::move(values));
    }

    std::mt19937 random_;
};

}  // namespace

TEST_CASE("levels stay within their scales whatever the beer") {
    RandomBeer beers(20210101);
    Deviates deviates(4);
    int outside = 0;
    for (int number = 0; number < 2000; ++number) {
        const Profile profile = sense(beers.next(), usual_palate(), deviates);
        for (const Attribute attribute : all_attributes()) {
            for (const double level : profile.level[attribute].draws()) {
                // Written so that not-a-number counts as outside.
                outside += level >= 0.0 && level <= highest_on(attribute) ? 0 : 1;
            }
        }
    }
    CHECK(outside == 0);
}

TEST_CASE("every attribute has as many draws as the beer") {
    const Profile profile = sensed(pale_ale());
    for (const Attribute attribute : all_attributes()) {
        CAPTURE(std::string(word_of(attribute)));
        CHECK(profile.level[attribute].count() == draws);
    }
}

TEST_CASE("what is not in the beer at all is sensed in no draw") {
    const Profile profile = sensed(pale_ale());
    for (const Attribute attribute :
         {Attribute::aroma_roast, Attribute::flavor_roast, Attribute::aroma_smoke, Attribute::flavor_smoke,
          Attribute::aroma_phenol, Attribute::flavor_phenol, Attribute::aroma_sour, Attribute::flavor_sour,
          Attribute::aroma_funk, Attribute::flavor_funk, Attribute::flavor_salt, Attribute::flavor_spice,
          Attribute::mouthfeel_astringency, Attribute::aroma_sulfur}) {
        CAPTURE(std::string(word_of(attribute)));
        CHECK(profile.level[attribute].chance([](double level) { return level != 0.0; }) == 0.0);
    }
}

TEST_CASE("the same beer is sensed the same every time") {
    const Profile first = sensed(pale_ale());
    const Profile second = sensed(pale_ale());
    for (const Attribute attribute : all_attributes()) {
        CHECK(first.level[attribute].draws() == second.level[attribute].draws());
    }
}

TEST_CASE("hops where they are added are where they are sensed") {
    Recipe early = pale_ale();
    early.hops = {boiled(cascade(), 100.0, 60.0)};
    Recipe whirled = pale_ale();
    whirled.hops = {stood(cascade(), 100.0, 20.0, 80.0)};
    Recipe dry = pale_ale();
    dry.hops = {dry_hopped(cascade(), 100.0, 4.0)};
    const Profile of_early = sensed(early);
    const Profile of_whirled = sensed(whirled);
    const Profile of_dry = sensed(dry);
    CHECK(level_of(of_early, Attribute::aroma_hop) < level_of(of_whirled, Attribute::aroma_hop));
    CHECK(level_of(of_whirled, Attribute::aroma_hop) < level_of(of_dry, Attribute::aroma_hop));
    CHECK(level_of(of_early, Attribute::flavor_bitterness) >
          level_of(of_whirled, Attribute::flavor_bitterness));
    CHECK(level_of(of_whirled, Attribute::flavor_bitterness) >
          level_of(of_dry, Attribute::flavor_bitterness));
}

TEST_CASE("a change of the recipe is sensed where brewers expect it") {
    const Profile plain = sensed(pale_ale());
    const auto raises = [&](Attribute attribute, auto change) {
        Recipe changed = pale_ale();
        change(changed);
        return level_of(sensed(changed), attribute) > level_of(plain, attribute);
    };
    CHECK(raises(Attribute::flavor_roast,
                 [](Recipe& recipe) { recipe.grist.push_back(grist(black_malt(), 0.3)); }));
    CHECK(raises(Attribute::flavor_caramel, [](Recipe& recipe) { recipe.grist[1].mass *= 3.0; }));
    CHECK(raises(Attribute::mouthfeel_body,
                 [](Recipe& recipe) { recipe.mash[0].temperature = celsius(71.0); }));
    CHECK(raises(Attribute::flavor_sweetness,
                 [](Recipe& recipe) { recipe.grist.push_back(grist(lactose(), 0.5, GristUse::boil)); }));
    CHECK(raises(Attribute::mouthfeel_warmth, [](Recipe& recipe) { recipe.grist[0].mass *= 1.6; }));
    CHECK(raises(Attribute::mouthfeel_warmth,
                 [](Recipe& recipe) { recipe.fermentation_temperature = celsius(28.0); }));
    CHECK(raises(Attribute::aroma_alcohol,
                 [](Recipe& recipe) { recipe.fermentation_temperature = celsius(28.0); }));
    CHECK(raises(Attribute::mouthfeel_carbonation,
                 [](Recipe& recipe) { recipe.conditioning.carbonation->middle = 3.2 * volume_of_co2; }));
    CHECK(raises(Attribute::aroma_ester,
                 [](Recipe& recipe) { recipe.fermentation_temperature = celsius(25.0); }));
    CHECK(raises(Attribute::appearance_clarity, [](Recipe& recipe) { recipe.conditioning.filtered = true; }));
    CHECK(
        raises(Attribute::mouthfeel_creaminess, [](Recipe& recipe) { recipe.conditioning.nitrogen = true; }));
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021, 24A: spice very low to medium-low; 15 g of
// coriander and 20 g of peel in 20 L: common practice.
TEST_CASE("a wit is spiced as a wit is") {
    Recipe recipe = pale_ale();
    ExtraAddition coriander;
    coriander.name = "coriander";
    coriander.kind = ExtraKind::spice;
    coriander.mass = 15.0 * gram;
    ExtraAddition peel = coriander;
    peel.name = "orange peel";
    peel.mass = 20.0 * gram;
    recipe.extras = {coriander, peel};
    const double level = level_of(sensed(recipe), Attribute::flavor_spice);
    CHECK(level >= 1.0);
    CHECK(level <= 3.3);
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021, 18B: medium to high bitterness, medium-light
// to medium body, medium to high carbonation, a beer that is no more than slightly warming.
TEST_CASE("a plain pale ale is sensed as one, within a step") {
    Recipe recipe = pale_ale();
    recipe.measured.bitterness = Uncertain<Bitterness>{40.0 * ibu, 0.0 * ibu};
    const Profile profile = sensed(recipe);
    const auto fits = [&](Attribute attribute, double low, double high) {
        const double level = level_of(profile, attribute);
        return level >= low - 1.0 && level <= high + 1.0;
    };
    CHECK(fits(Attribute::flavor_bitterness, 4.0, 6.0));
    CHECK(fits(Attribute::mouthfeel_body, 3.0, 4.0));
    CHECK(fits(Attribute::mouthfeel_carbonation, 4.0, 6.0));
    CHECK(fits(Attribute::flavor_finish, 1.0, 3.0));
    CHECK(level_of(profile, Attribute::mouthfeel_warmth) < 1.5);
    CHECK(level_of(profile, Attribute::appearance_clarity) >= 3.0);
}

TEST_CASE("a level is uncertain by the beer and by the palate") {
    const auto interval = sensed(pale_ale()).level[Attribute::flavor_bitterness].interval();
    CHECK(interval.high - interval.low > 0.8);
    CHECK(interval.high - interval.low < 3.0);
}

// Common practice: from some 30 SRM a glass lets no light through, and nobody tells how clear the beer is.
TEST_CASE("clarity is told as long as light passes through the glass") {
    const auto is_told_at = [](double color) {
        Deviates deviates(draws);
        Beer beer = brew(pale_ale(), deviates);
        beer.color.total = Estimate<Color>(std::vector<Color>(draws, color * srm));
        const std::vector<Attribute> untold = sense(beer, usual_palate(), deviates).untold;
        return std::find(untold.begin(), untold.end(), Attribute::appearance_clarity) == untold.end();
    };
    CHECK(is_told_at(28.0));
    CHECK_FALSE(is_told_at(32.0));
}
