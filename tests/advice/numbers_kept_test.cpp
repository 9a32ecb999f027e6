#include "advice/numbers_kept.hpp"

#include <doctest/doctest.h>

#include "tests/support/judging.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Beer with_bitterness(double ibus) {
    Beer beer = plain_beer();
    beer.tasted_bitterness = always(ibus * ibu);
    return beer;
}

}  // namespace

TEST_CASE("each number that leaves its range on either side is told of") {
    const Style style = style_about_plain_beer();
    REQUIRE(numbers_are_kept(style, plain_beer(), plain_beer()));
    for (const double gravity : {1.040, 1.060}) {
        Beer beer = plain_beer();
        beer.original_gravity.total = always(gravity * specific_gravity);
        CHECK_FALSE(numbers_are_kept(style, plain_beer(), beer));
    }
    for (const double gravity : {1.005, 1.016}) {
        Beer beer = plain_beer();
        beer.final_gravity = always(gravity * specific_gravity);
        CHECK_FALSE(numbers_are_kept(style, plain_beer(), beer));
    }
    for (const double percent : {4.0, 6.2}) {
        Beer beer = plain_beer();
        beer.alcohol = always(percent * percent_by_volume);
        CHECK_FALSE(numbers_are_kept(style, plain_beer(), beer));
    }
    for (const double ibus : {15.0, 45.0}) {
        CHECK_FALSE(numbers_are_kept(style, plain_beer(), with_bitterness(ibus)));
    }
    for (const double color : {3.0, 12.0}) {
        Beer beer = plain_beer();
        beer.color.total = always(color * srm);
        CHECK_FALSE(numbers_are_kept(style, plain_beer(), beer));
    }
}

TEST_CASE("within its range a number may go anywhere, and a hair past it") {
    const Style style = style_about_plain_beer();
    CHECK(numbers_are_kept(style, with_bitterness(21.0), with_bitterness(39.0)));
    CHECK(numbers_are_kept(style, plain_beer(), with_bitterness(40.9)));
    CHECK_FALSE(numbers_are_kept(style, plain_beer(), with_bitterness(41.5)));
}

TEST_CASE("what is out may stay out or come nearer, and one number in may pay for another") {
    const Style style = style_about_plain_beer();
    CHECK(numbers_are_kept(style, with_bitterness(60.0), with_bitterness(60.0)));
    CHECK(numbers_are_kept(style, with_bitterness(60.0), with_bitterness(50.0)));
    CHECK_FALSE(numbers_are_kept(style, with_bitterness(60.0), with_bitterness(70.0)));
    Beer paler = with_bitterness(35.0);
    paler.color.total = always(4.0 * srm);
    CHECK(numbers_are_kept(style, with_bitterness(60.0), paler));
}

TEST_CASE("a style that prints no two ends is kept by any beer") {
    CHECK(numbers_are_kept(Style(), plain_beer(), with_bitterness(500.0)));
    Style open;
    open.ranges.bitterness = Range<Bitterness>{20.0 * ibu, {}};
    CHECK(numbers_are_kept(open, plain_beer(), with_bitterness(2.0)));
}

TEST_CASE("numbers are outside by parts of the width of their ranges, all together") {
    const Style style = style_about_plain_beer();
    CHECK(numbers_outside(style, plain_beer()) == 0.0);
    CHECK(within(numbers_outside(style, with_bitterness(50.0)), 0.5, 1e-9));
    CHECK(within(numbers_outside(style, with_bitterness(10.0)), 0.5, 1e-9));
    CHECK(within(numbers_outside(style, with_bitterness(60.0)), 1.0, 1e-9));
    Beer stronger = with_bitterness(50.0);
    stronger.alcohol = always(6.4 * percent_by_volume);
    CHECK(within(numbers_outside(style, stronger), 1.0, 1e-9));
}
