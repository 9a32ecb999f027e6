#include "brewing/wort.hpp"

#include <doctest/doctest.h>

#include "brewing/process.hpp"
#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Wort wort_of(const Recipe& recipe) {
    Deviates middle(1);
    return make_wort(process_of(recipe), recipe.measured, middle);
}

double gravity_of(const Recipe& recipe) {
    return in(wort_of(recipe).original_gravity.total.median(), specific_gravity);
}

}  // namespace

// Common practice: a pound of sucrose in a US gallon gives 46 gravity points, which is 384 a kilogram in a
// liter.
TEST_CASE("two kilograms of sucrose in twenty liters give 38 gravity points") {
    CHECK(within(gravity_of(of_grist({grist(sucrose(), 2.0, GristUse::fermenter)})), 1.0384, 0.0004));
}

// Common practice: pale malt holds 37 points a pound and US gallon, 309 a kilogram and liter; at 72 %
// efficiency 5 kg in 20 L make 309 * 5 * 0.72 / 20 = 55.6 points.
TEST_CASE("five kilograms of pale ale malt at 72 % efficiency give about 1.056") {
    CHECK(within(gravity_of(of_grist({grist(pale_ale_malt(), 5.0)})), 1.056, 0.002));
}

// Common practice: 1 lb of dry malt extract in a US gallon gives 42 to 46 points, 350 to 384 a kilogram and
// liter.
TEST_CASE("dry malt extract needs no mash and no efficiency") {
    Recipe recipe = of_grist({grist(pale_malt_extract(), 3.0, GristUse::boil)});
    recipe.mashed = false;
    recipe.mash.clear();
    const double gravity = gravity_of(recipe);
    CHECK(gravity > 1.0 + 0.94 * 0.350 * 3.0 / 20.0);
    CHECK(gravity < 1.0 + 0.384 * 3.0 / 20.0);
    recipe.efficiency = Uncertain<Share>{50.0 * percent, 0.0 * percent};
    CHECK(gravity_of(recipe) == gravity);
}

TEST_CASE("late sugar is outside the efficiency of the mash") {
    Recipe good = of_grist({grist(pale_ale_malt(), 4.0), grist(sucrose(), 0.5, GristUse::boil)});
    Recipe poor = good;
    good.efficiency = Uncertain<Share>{80.0 * percent, 0.0 * percent};
    poor.efficiency = Uncertain<Share>{60.0 * percent, 0.0 * percent};
    const Part<Mass> of_good = wort_of(good).extract[1];
    const Part<Mass> of_poor = wort_of(poor).extract[1];
    CHECK(of_good.ingredient == "sucrose");
    CHECK(of_good.amount.median() == of_poor.amount.median());
    CHECK(of_good.amount.median() > 0.94 * 0.5 * kilogram);
    CHECK(gravity_of(good) > gravity_of(poor));
}

TEST_CASE("sugar in the kettle is lost with the trub, in the fermenter it is not") {
    const double in_kettle = gravity_of(of_grist({grist(sucrose(), 1.0, GristUse::boil)}));
    const double in_fermenter = gravity_of(of_grist({grist(sucrose(), 1.0, GristUse::fermenter)}));
    CHECK(in_kettle < in_fermenter);
}

TEST_CASE("more malt raises the gravity, more volume lowers it") {
    double before = 1.0;
    for (double kilograms = 1.0; kilograms < 12.0; kilograms += 0.5) {
        const double gravity = gravity_of(of_grist({grist(pale_ale_malt(), kilograms)}));
        CHECK(gravity > before);
        before = gravity;
    }
    Recipe larger = of_grist({grist(pale_ale_malt(), 5.0)});
    const double gravity = gravity_of(larger);
    larger.volume.middle = 25.0 * liter;
    CHECK(gravity_of(larger) < gravity);
}

// Common practice: gravity points times volume stay the same when water is boiled off or added.
TEST_CASE("gravity points go with the volume") {
    Recipe recipe = of_grist({grist(pale_ale_malt(), 5.0)});
    const double points = 20.0 * (gravity_of(recipe) - 1.0);
    recipe.volume.middle = 25.0 * liter;
    CHECK(within(25.0 * (gravity_of(recipe) - 1.0), points, 0.0003 * 25.0));
}

TEST_CASE("grain that is only steeped gives less than in a mash, base malt hardly anything") {
    Recipe mashed = of_grist({grist(crystal_malt(), 0.5)});
    Recipe steeped = mashed;
    steeped.mashed = false;
    steeped.mash.clear();
    const double of_mash = gravity_of(mashed) - 1.0;
    const double of_crystal = gravity_of(steeped) - 1.0;
    CHECK(of_crystal > 0.0);
    CHECK(of_crystal < of_mash);
    // Half of its extract, against 72 % in the mash: common practice.
    CHECK(within(of_crystal / of_mash, 0.5 / 0.72, 0.07));
    steeped.grist = {grist(pale_ale_malt(), 0.5)};
    CHECK(gravity_of(steeped) - 1.0 < 0.5 * of_crystal);
}

TEST_CASE("what was measured replaces the balance and tells the efficiency") {
    Recipe recipe = of_grist({grist(pale_ale_malt(), 5.0), grist(crystal_malt(), 0.3)});
    const Wort estimated = wort_of(recipe);
    recipe.measured.original_gravity =
        Uncertain<SpecificGravity>{1.050 * specific_gravity, 0.0 * specific_gravity};
    const Wort measured = wort_of(recipe);
    CHECK(measured.original_gravity.total.median() == 1.050 * specific_gravity);
    CHECK(measured.efficiency.median() < estimated.efficiency.median());
    REQUIRE(measured.original_gravity.sources.size() == 2);
    CHECK(measured.original_gravity.sources[0].share == estimated.original_gravity.sources[0].share);
    const double ratio = in(measured.extract[0].amount.median(), estimated.extract[0].amount.median());
    CHECK(within(in(measured.efficiency.median(), estimated.efficiency.median()), ratio, 1e-12));
}

TEST_CASE("the largest source of extract comes first and the shares add up to one") {
    const Wort wort =
        wort_of(of_grist({grist(crystal_malt(), 0.3), grist(pale_ale_malt(), 4.0), grist(sucrose(), 0.5)}));
    const auto& sources = wort.original_gravity.sources;
    REQUIRE(sources.size() == 3);
    CHECK(sources[0].ingredient == "pale ale malt");
    CHECK(sources[1].ingredient == "sucrose");
    CHECK(within(sources[0].share + sources[1].share + sources[2].share, 1.0, 1e-12));
}

TEST_CASE("the kettle holds more than the fermenter, and the boil begins thinner than it ends") {
    const Wort wort = wort_of(of_grist({grist(pale_ale_malt(), 5.0)}));
    CHECK(wort.kettle_volume.median() > wort.volume.median());
    CHECK(wort.boil_gravity.median() < wort.original_gravity.total.median());
    CHECK(wort.boil_gravity.median() > 1.040 * specific_gravity);
}

TEST_CASE("sugar added to the fermenter is not in the boil") {
    const Recipe in_kettle = of_grist({grist(pale_ale_malt(), 4.0), grist(sucrose(), 1.0, GristUse::boil)});
    const Recipe in_fermenter =
        of_grist({grist(pale_ale_malt(), 4.0), grist(sucrose(), 1.0, GristUse::fermenter)});
    CHECK(wort_of(in_fermenter).boil_gravity.median() < wort_of(in_kettle).boil_gravity.median());
}

// Common practice: whole fruit is some nine tenths water, so it thins a wort stronger than itself.
TEST_CASE("fruit brings its water along") {
    const Fermentable fruit = fermentable("raspberries", FermentableKind::fruit, 9.0, 0.0, 1.0, 1.0);
    const Recipe plain = of_grist({grist(pale_ale_malt(), 5.0)});
    const Recipe fruited = of_grist({grist(pale_ale_malt(), 5.0), grist(fruit, 4.0, GristUse::fermenter)});
    const Wort wort = wort_of(fruited);
    CHECK(within(in(wort.volume.median(), liter), 23.6, 0.1));
    CHECK(gravity_of(fruited) < gravity_of(plain));
    CHECK(gravity_of(fruited) > 1.045);
}

TEST_CASE("a recipe without grist makes water") {
    CHECK(within(gravity_of(of_grist({})), 1.0, 1e-4));
}
