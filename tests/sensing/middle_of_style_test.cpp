#include "sensing/middle_of_style.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Style with_numbers() {
    Style style;
    style.ranges.original_gravity =
        Range<SpecificGravity>{1.045 * specific_gravity, 1.055 * specific_gravity};
    style.ranges.final_gravity = Range<SpecificGravity>{1.008 * specific_gravity, 1.014 * specific_gravity};
    style.ranges.alcohol = Range<AlcoholByVolume>{4.6 * percent_by_volume, 5.8 * percent_by_volume};
    style.ranges.bitterness = Range<Bitterness>{20.0 * ibu, 40.0 * ibu};
    style.ranges.color = Range<Color>{5.0 * srm, 9.0 * srm};
    return style;
}

}  // namespace

TEST_CASE("the middle of a style lies between the ends of its numbers") {
    const auto middle = middle_of(with_numbers());
    REQUIRE(middle);
    CHECK(within(in(middle->original_gravity, specific_gravity), 1.050, 1e-9));
    CHECK(within(in(middle->final_gravity, specific_gravity), 1.011, 1e-9));
    CHECK(within(in(middle->alcohol, percent_by_volume), 5.2, 1e-9));
    CHECK(within(in(middle->bitterness, ibu), 30.0, 1e-9));
    CHECK(within(in(middle->color, srm), 7.0, 1e-9));
}

TEST_CASE("oats thicken the middle of a style, unless a mixed culture takes what they add") {
    Style style = with_numbers();
    CHECK(middle_of(style)->grain_body == 0.0 * gram_per_liter);
    style.custom.grist_typical = {"flaked oats"};
    for (const char* clean : {"top", "bottom", "either", ""}) {
        style.fermentation = clean;
        CHECK(middle_of(style)->grain_body > 10.0 * gram_per_liter);
    }
    for (const char* wild : {"mixed", "spontaneous"}) {
        style.fermentation = wild;
        CHECK(middle_of(style)->grain_body == 0.0 * gram_per_liter);
    }
}

TEST_CASE("a style that lacks one of the five numbers has no middle") {
    Style style = with_numbers();
    style.ranges.original_gravity = {};
    CHECK_FALSE(middle_of(style));
    style = with_numbers();
    style.ranges.final_gravity = {};
    CHECK_FALSE(middle_of(style));
    style = with_numbers();
    style.ranges.alcohol = {};
    CHECK_FALSE(middle_of(style));
    style = with_numbers();
    style.ranges.bitterness = {};
    CHECK_FALSE(middle_of(style));
    style = with_numbers();
    style.ranges.color = {};
    CHECK_FALSE(middle_of(style));
}
