#include "brewing/conditioning.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Drivers drivers_with(const ExtraAddition& addition) {
    return brew_at_middle(with_extra(addition)).drivers;
}

double cold_weeks(double degrees, double days) {
    Recipe recipe = pale_ale();
    recipe.conditioning.temperature = celsius(degrees);
    recipe.conditioning.time = days * day;
    return brew_at_middle(recipe).drivers.cold_weeks;
}

double dms_after(double boil_minutes, const Fermentable& malt) {
    Recipe recipe = bare_recipe();
    recipe.grist = {grist(malt, 4.5)};
    recipe.boil.time = boil_minutes * minute;
    return brew_at_middle(recipe).drivers.dms.median();
}

}  // namespace

TEST_CASE("weeks count only in the cold") {
    CHECK(within(cold_weeks(2.0, 21.0), 3.0, 1e-9));
    // Beer is lagered below about 8 °C: common practice.
    CHECK(cold_weeks(7.0, 21.0) > 2.9);
    CHECK(cold_weeks(9.0, 21.0) == 0.0);
    CHECK(cold_weeks(18.0, 21.0) == 0.0);
    CHECK(brew_at_middle(pale_ale()).drivers.cold_weeks == 0.0);
}

TEST_CASE("filter, nitrogen and finings are passed on, and absent where not stated") {
    const Drivers plain = brew_at_middle(pale_ale()).drivers;
    CHECK_FALSE(plain.filtered);
    CHECK_FALSE(plain.nitrogen);
    CHECK_FALSE(plain.fined);
    CHECK_FALSE(plain.fruit_or_wood);
    Recipe recipe = pale_ale();
    recipe.conditioning.filtered = true;
    recipe.conditioning.nitrogen = true;
    recipe.extras = {extra("gelatin", ExtraKind::fining, 2.0)};
    const Drivers drivers = brew_at_middle(recipe).drivers;
    CHECK(drivers.filtered);
    CHECK(drivers.nitrogen);
    CHECK(drivers.fined);
}

TEST_CASE("salt and spice are told by the liter of beer") {
    CHECK(
        within(in(drivers_with(extra("sea salt", ExtraKind::salt, 16.0)).salt.total.median(), gram_per_liter),
               0.8, 1e-9));
    const Drivers spiced = drivers_with(extra("coriander", ExtraKind::spice, 15.0));
    CHECK(within(in(spiced.spice.total.median(), gram_per_liter), 0.75, 1e-9));
    REQUIRE(spiced.spice.sources.size() == 1);
    CHECK(spiced.spice.sources[0].ingredient == "coriander");
    CHECK(spiced.salt.total.median() == 0.0 * gram_per_liter);
}

TEST_CASE("fruit and wood are told as such") {
    CHECK(drivers_with(extra("raspberries", ExtraKind::fruit, 500.0)).fruit_or_wood);
    CHECK(drivers_with(extra("oak", ExtraKind::wood, 20.0)).fruit_or_wood);
    CHECK_FALSE(drivers_with(extra("coriander", ExtraKind::spice, 10.0)).fruit_or_wood);
}

// Dickenson, Dimethyl sulphide: its origin and control in brewing, Journal of the Institute of Brewing 85,
// 1979: the precursor halves in some 38 min of boil.
TEST_CASE("a longer boil never leaves more dimethyl sulfide") {
    double before = 1e9;
    for (double minutes = 15.0; minutes <= 120.0; minutes += 15.0) {
        const double found = dms_after(minutes, pilsner_malt());
        CHECK(found < before);
        before = found;
    }
}

// Common practice: a 90 min boil of pilsner malt leaves no cooked corn, a short one may; pale ale malt needs
// no care.
TEST_CASE("dimethyl sulfide is near its threshold after a short boil of pilsner malt only") {
    CHECK(dms_after(30.0, pilsner_malt()) > 1.0);
    CHECK(dms_after(90.0, pilsner_malt()) < 1.0);
    CHECK(dms_after(60.0, pale_ale_malt()) < 0.7);
}

TEST_CASE("yeast says how well it settles") {
    Recipe recipe = pale_ale();
    recipe.yeasts.front().yeast.flocculation = Flocculation::low;
    recipe.yeasts.front().yeast.haze_positive = true;
    const Drivers drivers = brew_at_middle(recipe).drivers;
    CHECK(drivers.flocculation == Flocculation::low);
    CHECK(drivers.haze_positive);
}
