#include "judging/score_range.hpp"

#include <doctest/doctest.h>

#include "tests/support/judging.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

using Bands = std::vector<std::string>;

/// Bands and courtesy floor: Beer Judge Certification Program, Beer Scoresheet.
ScoreSheet guided_sheet() {
    ScoreSheet sheet = fifty_points();
    sheet.bands = {{"problematic", 0.0, 13.0}, {"fair", 14.0, 20.0},      {"good", 21.0, 29.0},
                   {"very good", 30.0, 37.0},  {"excellent", 38.0, 44.0}, {"outstanding", 45.0, 50.0}};
    sheet.courtesy_floor = 13.0;
    sheet.well_made = {38.0, 42.0};
    return sheet;
}

ScoreRange range_at(double low, double high) {
    return score_range({.median = 0.5 * (low + high), .low = low, .high = high}, guided_sheet());
}

}  // namespace

TEST_CASE("a beer with nothing at risk is worth what a well made beer is worth") {
    const ScoreRange range = range_at(0.0, 0.0);
    CHECK(range.low == 38.0);
    CHECK(range.high == 42.0);
    CHECK(range.bands == Bands{"excellent"});
}

TEST_CASE("the most at risk stands against the least that a well made beer is worth") {
    const ScoreRange range = range_at(4.0, 7.0);
    CHECK(range.low == 31.0);
    CHECK(range.high == 38.0);
    CHECK(range.bands == Bands{"very good", "excellent"});
}

TEST_CASE("scores are whole points and bands follow the points that are printed") {
    CHECK(range_at(4.4, 4.4).high == 38.0);
    CHECK(range_at(4.4, 4.4).bands == Bands{"very good", "excellent"});
    CHECK(range_at(4.6, 8.4).low == 30.0);
    CHECK(range_at(4.6, 8.4).bands == Bands{"very good"});
}

// Beer Judge Certification Program, Beer Scoresheet: no beer is given less than 13.
TEST_CASE("no beer falls under the courtesy floor") {
    CHECK(range_at(20.0, 45.0).low == 13.0);
    CHECK(range_at(40.0, 45.0).high == 13.0);
    CHECK(range_at(40.0, 45.0).bands == Bands{"problematic"});
}
