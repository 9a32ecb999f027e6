#include "style/style.hpp"

#include <doctest/doctest.h>

using namespace entrywise;

TEST_CASE("a range holds both its ends and what lies between") {
    const Range<Bitterness> range{40.0 * ibu, 70.0 * ibu};
    CHECK(range.contains(40.0 * ibu));
    CHECK(range.contains(55.0 * ibu));
    CHECK(range.contains(70.0 * ibu));
    CHECK_FALSE(range.contains(39.9 * ibu));
    CHECK_FALSE(range.contains(70.1 * ibu));
}

TEST_CASE("an open end excludes nothing") {
    const Range<AlcoholByVolume> strong{8.0 * percent_by_volume, {}};
    CHECK(strong.contains(14.0 * percent_by_volume));
    CHECK_FALSE(strong.contains(7.9 * percent_by_volume));
    const Range<Color> pale{{}, 5.0 * srm};
    CHECK(pale.contains(0.0 * srm));
    CHECK_FALSE(pale.contains(5.1 * srm));
    const Range<Color> any{};
    CHECK(any.contains(80.0 * srm));
}

TEST_CASE("the upper border of a continuum belongs to the next style") {
    const Range<AlcoholByVolume> light{2.5 * percent_by_volume, 3.3 * percent_by_volume, true};
    CHECK(light.contains(3.2 * percent_by_volume));
    CHECK_FALSE(light.contains(3.3 * percent_by_volume));
    CHECK(light.contains(2.5 * percent_by_volume));
}

TEST_CASE("a style says nothing of itself before it is filled in") {
    const Style style;
    CHECK_FALSE(style.ranges.bitterness.has_value());
    for (const Attribute attribute : all_attributes()) {
        CHECK_FALSE(style.expected[attribute].has_value());
    }
}
