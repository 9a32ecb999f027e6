#include "judging/score_comparison.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/support/judging.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

ScoreSheet usual_sheet() {
    ScoreSheet sheet = fifty_points();
    sheet.well_made = {38.0, 42.0};
    return sheet;
}

ScoreComparison compared_flavor(double given, const PointsAtRisk& at_risk) {
    Sheet sheet;
    sheet.at_risk[Section::flavor] = at_risk;
    SectionScores scores;
    scores[Section::flavor] = given;
    const auto compared = compared_scores(scores, sheet, usual_sheet());
    REQUIRE(compared.size() == 1);
    return compared.front();
}

}  // namespace

// Flavor of an excellent beer: 15 to 17 of 20; of a fair one 6 to 8. The bands of the scoring guide as shares
// of the section: Beer Judge Certification Program, Beer Scoresheet.

TEST_CASE("an excellent flavor is as expected of a beer with nothing at risk, a fair one is not") {
    CHECK_FALSE(compared_flavor(16.0, {}).parts.has_value());
    CHECK(compared_flavor(7.0, {}).parts == Direction::below);
}

TEST_CASE("points at risk lower what is expected and widen the span") {
    const ScoreComparison safe = compared_flavor(16.0, {});
    const ScoreComparison risky = compared_flavor(16.0, {.median = 6.0, .low = 2.0, .high = 10.0});
    CHECK(risky.expected < safe.expected);
    CHECK(risky.high - risky.low > safe.high - safe.low);
}

TEST_CASE("what is as likely more as less at risk widens the span to both sides alike") {
    const ScoreComparison risky = compared_flavor(10.0, {.median = 6.0, .low = 2.0, .high = 10.0});
    CHECK(std::abs((risky.high - risky.expected) - (risky.expected - risky.low)) <= 0.5);
}

TEST_CASE("two judges within seven points of each other on the whole sheet are not told apart by a section") {
    // The rule of the table: Beer Judge Certification Program, Judge Procedures Manual, 2010. Flavor carries
    // 20 of 50.
    const double share_of_seven = 7.0 * 20.0 / 50.0;
    const ScoreComparison comparison = compared_flavor(16.0, {});
    CHECK_FALSE(compared_flavor(comparison.expected - share_of_seven, {}).parts.has_value());
    CHECK_FALSE(compared_flavor(comparison.expected + share_of_seven, {}).parts.has_value());
}

TEST_CASE("the span stays on the sheet, and sections without points are left out") {
    const ScoreComparison ruined = compared_flavor(0.0, {.median = 20.0, .low = 18.0, .high = 20.0});
    CHECK(ruined.low >= 0.0);
    CHECK(ruined.expected >= 0.0);
    CHECK(compared_scores({}, Sheet(), usual_sheet()).empty());
}

// The rule of the table again: judges who agree are within seven points of each other on the whole sheet, of
// which a section that errs by itself has the root of its share.
TEST_CASE("of a beer with nothing at risk a section is known as closely as judges agree") {
    const ScoreComparison comparison = compared_flavor(16.0, {});
    CHECK(comparison.high - comparison.low <= 2.0 * 7.0 * std::sqrt(20.0 / 50.0));
}

// Beer Judge Certification Program, Beer Scoresheet: from 30 of 50 a beer is very good, from 38 excellent.
// The flavor of one that is just very good carries 12 of 20.
TEST_CASE("a flavor a whole band below what is expected is told apart") {
    CHECK(compared_flavor(12.0, {}).parts == Direction::below);
}

// Judges give whole and half points: common practice.
TEST_CASE("spans end at half points, and a ruined section is worth nothing") {
    for (double risk = 0.0; risk <= 20.0; risk += 1.3) {
        CAPTURE(risk);
        const ScoreComparison comparison =
            compared_flavor(10.0, {.median = risk, .low = 0.7 * risk, .high = 1.1 * risk});
        CHECK(std::fmod(2.0 * comparison.low, 1.0) == 0.0);
        CHECK(std::fmod(2.0 * comparison.high, 1.0) == 0.0);
        CHECK(comparison.low <= comparison.expected);
        CHECK(comparison.high >= comparison.expected - 0.25);
    }
    CHECK(compared_flavor(0.0, {.median = 20.0, .low = 18.0, .high = 20.0}).expected == 0.0);
}
