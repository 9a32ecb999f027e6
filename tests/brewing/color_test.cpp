#include "brewing/color.hpp"

#include <doctest/doctest.h>

#include "tests/published/color.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("beer color in European units") {
    // American Society of Brewing Chemists, Methods of Analysis, Beer-10; European Brewery Convention,
    // Analytica, 9.6.
    CHECK(within(in_ebc(published::color_in_srm * srm), published::color_in_ebc, 0.1));
    CHECK(within(in_ebc(ebc(33.0)), 33.0, 1e-12));
    CHECK(within(ebc(published::color_in_ebc).value(), published::color_in_srm, 0.05));
}

TEST_CASE("malt color in SRM and European units") {
    // Common practice of maltsters' certificates: 1.3546 L - 0.76 in SRM and 2.65 L - 1.2 in European units.
    CHECK(within(color_of(60.0 * lovibond).value(), 80.5, 0.1));
    CHECK(within(in_ebc(10.0 * lovibond), 25.3, 0.5));
    CHECK(within(in_ebc(60.0 * lovibond), 157.8, 1.0));
    CHECK(within(in_ebc(2.0 * lovibond), 4.1, 0.5));
}

TEST_CASE("malt color units are pounds and Lovibond in a gallon") {
    // 10 lb of 4 °L in 5 gal are 8 units; 1 kg of 1 °L in 1 L is 8.345. Common practice.
    CHECK(
        within(in(ColorLoad(10.0 * pound / (5.0 * gallon) * (4.0 * lovibond)), malt_color_unit), 8.0, 1e-9));
    CHECK(within(in(ColorLoad(kilogram / liter * lovibond), malt_color_unit), 8.345, 0.001));
}

TEST_CASE("beer color from malt color units") {
    // Morey, web note, 1995; Daniels, Designing great beers, 1996; Mosher, The brewer's companion, 1994.
    const auto load = [](const published::ColorOfLoad& of) { return of.malt_color_units * malt_color_unit; };
    using published::color_by_daniels;
    using published::color_by_morey;
    using published::color_by_mosher;
    CHECK(within(morey_color(load(color_by_morey)).value(), color_by_morey.srm, 0.05));
    CHECK(within(daniels_color(load(color_by_daniels)).value(), color_by_daniels.srm, 1e-9));
    CHECK(within(mosher_color(load(color_by_mosher)).value(), color_by_mosher.srm, 1e-9));
    CHECK(within(linear_color(3.0 * malt_color_unit).value(), 3.0, 1e-9));
}

TEST_CASE("the curve joins the lines where they hold") {
    // Morey 1995: fitted to the other three, so that it is within 2 SRM of their middle.
    CHECK(within(morey_color(4.0 * malt_color_unit).value(), 4.0, 1.0));
    CHECK(within(morey_color(15.0 * malt_color_unit).value(), 10.3, 2.0));
    CHECK(within(morey_color(40.0 * malt_color_unit).value(), 16.6, 2.5));
}

TEST_CASE("congress wort has the color of its malt") {
    // A congress wort holds 117 g of malt a liter, close to a pound a gallon. European Brewery Convention,
    // Analytica, 4.5.1, from memory.
    const MaltColor malt = 4.0 * lovibond;
    CHECK(within(wort_color(117.0 * gram_per_liter, malt) / color_of(malt), 1.0, 0.03));
    CHECK(wort_color(117.0 * gram_per_liter, 0.0 * lovibond).value() == 0.0);
}

// Beer's law: what absorbs does so in proportion to how much there is of it.
TEST_CASE("half as much malt in the wort gives half of the color, twice as much twice of it") {
    const Concentration congress = pound / gallon;
    const double color = wort_color(congress, 20.0 * lovibond).value();
    CHECK(within(wort_color(0.5 * congress, 20.0 * lovibond).value(), 0.5 * color, 1e-9));
    CHECK(within(wort_color(2.0 * congress, 20.0 * lovibond).value(), 2.0 * color, 1e-9));
}
