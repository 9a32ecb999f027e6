#include "sensing/middle_of_style.hpp"

#include <doctest/doctest.h>

#include "tests/support/judging.hpp"
#include "tests/support/palate.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

TEST_CASE("the middle of a style lies between the ends of its numbers") {
    const auto middle = middle_of(style_about_plain_beer());
    REQUIRE(middle);
    CHECK(within(in(middle->original_gravity, specific_gravity), 1.050, 1e-9));
    CHECK(within(in(middle->final_gravity, specific_gravity), 1.011, 1e-9));
    CHECK(within(in(middle->alcohol, percent_by_volume), 5.2, 1e-9));
    CHECK(within(in(middle->bitterness, ibu), 30.0, 1e-9));
    CHECK(within(in(middle->color, srm), 7.0, 1e-9));
}

TEST_CASE("oats thicken the middle of a style, unless a mixed culture takes what they add") {
    Style style = style_about_plain_beer();
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

// Common practice: oats make a beer creamy, and what tastes sour smells somewhat less so.
TEST_CASE("the middle of a style is as creamy as its grain and smells of what is sour in it") {
    Style style = style_about_plain_beer();
    const auto level = [&style](Attribute attribute) {
        return *levels_at_middle(*middle_of(style), usual_palate())[attribute];
    };
    const double plain = level(Attribute::mouthfeel_creaminess);
    style.custom.grist_typical = {"flaked oats"};
    CHECK(level(Attribute::mouthfeel_creaminess) > plain + 0.5);
    CHECK(level(Attribute::aroma_sour) == 0.0);
    style.expected[Attribute::flavor_sour] = Expectation{3.0, 5.0, false};
    CHECK(level(Attribute::aroma_sour) > 3.0);
    CHECK(level(Attribute::aroma_sour) < 4.0);
}

// Common practice: wheat and gas hold up foam, sugar and corn do not.
TEST_CASE("the middle of a style has the head of its customary gas and grist") {
    Style style = style_about_plain_beer();
    const auto level = [&style](Attribute attribute) {
        return *levels_at_middle(*middle_of(style), usual_palate())[attribute];
    };
    const double size = level(Attribute::appearance_head_size);
    const double retention = level(Attribute::appearance_head_retention);
    style.custom.grist_typical = {"wheat"};
    CHECK(level(Attribute::appearance_head_size) > size);
    CHECK(level(Attribute::appearance_head_retention) > retention);
    style.custom.grist_typical = {"sugar"};
    CHECK(level(Attribute::appearance_head_size) == size);
    CHECK(level(Attribute::appearance_head_retention) < retention);
    style.custom.grist_typical.clear();
    style.custom.carbonation = Span<Carbonation>{3.4 * volume_of_co2, 3.8 * volume_of_co2};
    CHECK(level(Attribute::appearance_head_size) > size + 1.0);
}

TEST_CASE("a style that lacks one of the five numbers has no middle") {
    Style style = style_about_plain_beer();
    style.ranges.original_gravity = {};
    CHECK_FALSE(middle_of(style));
    style = style_about_plain_beer();
    style.ranges.final_gravity = {};
    CHECK_FALSE(middle_of(style));
    style = style_about_plain_beer();
    style.ranges.alcohol = {};
    CHECK_FALSE(middle_of(style));
    style = style_about_plain_beer();
    style.ranges.bitterness = {};
    CHECK_FALSE(middle_of(style));
    style = style_about_plain_beer();
    style.ranges.color = {};
    CHECK_FALSE(middle_of(style));
}
