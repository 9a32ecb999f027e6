#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "judging/deviation.hpp"
#include "judging/sheet.hpp"
#include "tests/support/judging.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Profile profile_with(Attribute attribute, double level) {
    Profile profile = plain_profile();
    profile.level[attribute] = always(level);
    return profile;
}

/// Points at risk of a beer whose one attribute has this level, against levels from 2 to 4.
Sheet sheet_at(Attribute attribute, double level, bool assumed = false) {
    return judge(plain_beer(), profile_with(attribute, level),
                 style_that_expects(attribute, 2.0, 4.0, assumed), fifty_points());
}

double sum_of_sections(const Sheet& sheet) {
    double sum = 0.0;
    for (const Section section :
         {Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel, Section::overall}) {
        sum += sheet.at_risk[section].median;
    }
    return sum;
}

/// The chance that a gravity lies in a range with this upper end.
double chance_below(double gravity, double upper) {
    Beer beer = plain_beer();
    beer.original_gravity.total = always(gravity * specific_gravity);
    Style style;
    style.ranges.original_gravity = Range<SpecificGravity>{{}, upper * specific_gravity};
    const Sheet sheet = judge(beer, plain_profile(), style, fifty_points());
    REQUIRE(sheet.numbers.size() == 1);
    CHECK(sheet.numbers[0].number == Number::original_gravity);
    return sheet.numbers[0].within;
}

double points_for_color(double color, std::optional<double> low, std::optional<double> high) {
    Beer beer = plain_beer();
    beer.color.total = always(color * srm);
    Style style;
    Range<Color> range;
    if (low) {
        range.low = *low * srm;
    }
    if (high) {
        range.high = *high * srm;
    }
    style.ranges.color = range;
    return judge(beer, plain_profile(), style, fifty_points()).total.median;
}

}  // namespace

TEST_CASE("a beer inside everything that is asked costs nothing") {
    Style style = style_that_expects(Attribute::flavor_bitterness, 2.0, 4.0);
    style.expected[Attribute::aroma_hop] = Expectation{3.0, 3.0, false};
    style.ranges.color = Range<Color>{6.0 * srm, 10.0 * srm};
    style.ranges.bitterness = Range<Bitterness>{30.0 * ibu, 40.0 * ibu};
    const Sheet sheet = judge(plain_beer(), plain_profile(), style, fifty_points());
    CHECK(sheet.total.high == 0.0);
    CHECK(sheet.findings.empty());
    CHECK(sheet.attributes_checked == 2);
    CHECK(sheet.attributes_not_described == static_cast<int>(attribute_count) - 2);
}

TEST_CASE("a style that says nothing costs nothing") {
    CHECK(judge(plain_beer(), plain_profile(), Style(), fifty_points()).total.high == 0.0);
}

TEST_CASE("the further outside, the more points, above and below") {
    for (const double direction : {1.0, -1.0}) {
        double before = 0.0;
        for (double steps = 0.0; steps <= 5.0; steps += 0.25) {
            const double points =
                sheet_at(Attribute::flavor_roast, 3.0 + direction * (1.0 + steps)).total.median;
            CHECK(points >= before);
            before = points;
        }
        CHECK(before > 5.0);
    }
}

TEST_CASE("a wider range of levels never costs more") {
    double before = 1e9;
    for (double wider = 0.0; wider <= 4.0; wider += 0.5) {
        const double points =
            judge(plain_beer(), profile_with(Attribute::flavor_roast, 7.0),
                  style_that_expects(Attribute::flavor_roast, 2.0 - 0.5 * wider, 3.0 + wider), fifty_points())
                .total.median;
        CHECK(points <= before);
        before = points;
    }
    CHECK(before == 0.0);
}

TEST_CASE("the sections add up to the whole") {
    const Sheet sheet = sheet_at(Attribute::aroma_hop, 6.5);
    CHECK(sheet.total.median > 3.0);
    CHECK(within(sum_of_sections(sheet), sheet.total.median, 1e-9));
}

TEST_CASE("a miss is shared out over the sections as its cause says") {
    // Two thresholds outside and fully noticed, but little enough that no section runs out of points.
    const Sheet sheet = sheet_at(Attribute::aroma_hop, 7.0);
    const double aroma = sheet.at_risk[Section::aroma].median;
    CHECK(within(sheet.at_risk[Section::flavor].median / aroma, 0.35 / 0.40, 1e-9));
    CHECK(within(sheet.at_risk[Section::overall].median / aroma, 0.25 / 0.40, 1e-9));
    CHECK(sheet.at_risk[Section::appearance].median == 0.0);
    CHECK(sheet.at_risk[Section::mouthfeel].median == 0.0);
}

TEST_CASE("no section costs more points than it has") {
    Style style;
    Profile profile;
    for (const Attribute attribute : all_attributes()) {
        style.expected[attribute] = Expectation{0.0, 0.0, false};
        profile.level[attribute] = always(static_cast<double>(words_of(scale_of(attribute)).size() - 1));
    }
    style.ranges.color = Range<Color>{{}, 2.0 * srm};
    ScoreSheet severe = fifty_points();
    for (Cause& cause : severe.causes) {
        cause.weight = 20.0;
    }
    const Sheet sheet = judge(plain_beer(), profile, style, severe);
    for (const Section section :
         {Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel, Section::overall}) {
        CHECK(sheet.at_risk[section].high <= severe.points[section]);
        CHECK(sheet.at_risk[section].median > 0.0);
    }
    CHECK(sheet.total.high <= 50.0);
}

TEST_CASE("one cause is charged once in a section, however many attributes show it") {
    const Sheet one = sheet_at(Attribute::flavor_bitterness, 6.0);
    Style style = style_that_expects(Attribute::flavor_bitterness, 2.0, 4.0);
    style.expected[Attribute::flavor_balance] = Expectation{2.0, 4.0, false};
    Profile profile = profile_with(Attribute::flavor_bitterness, 6.0);
    profile.level[Attribute::flavor_balance] = always(6.0);
    const Sheet both = judge(plain_beer(), profile, style, fifty_points());
    CHECK(both.total.median == one.total.median);
}

TEST_CASE("two causes cost more than one and less than their sum") {
    const double bitter = sheet_at(Attribute::flavor_bitterness, 6.0).total.median;
    const double roasty = sheet_at(Attribute::flavor_roast, 6.0).total.median;
    Style style = style_that_expects(Attribute::flavor_bitterness, 2.0, 4.0);
    style.expected[Attribute::flavor_roast] = Expectation{2.0, 4.0, false};
    Profile profile = profile_with(Attribute::flavor_bitterness, 6.0);
    profile.level[Attribute::flavor_roast] = always(6.0);
    const double together = judge(plain_beer(), profile, style, fifty_points()).total.median;
    CHECK(together > std::max(bitter, roasty));
    CHECK(together < bitter + roasty);
}

TEST_CASE("what a guide takes for granted weighs less than what it states") {
    const Sheet stated = sheet_at(Attribute::flavor_roast, 6.0);
    const Sheet assumed = sheet_at(Attribute::flavor_roast, 6.0, true);
    CHECK(assumed.total.median > 0.0);
    CHECK(within(assumed.total.median, 0.5 * stated.total.median, 1e-9));
    REQUIRE(assumed.findings.size() == 1);
    CHECK(assumed.findings[0].assumed);
}

TEST_CASE("a miss of the words weighs less while the numbers behind them are met") {
    Style style = style_that_expects(Attribute::flavor_bitterness, 2.0, 4.0);
    const Profile profile = profile_with(Attribute::flavor_bitterness, 6.0);
    const double alone = judge(plain_beer(), profile, style, fifty_points()).total.median;
    style.ranges.bitterness = Range<Bitterness>{30.0 * ibu, 40.0 * ibu};
    CHECK(judge(plain_beer(), profile, style, fifty_points()).total.median < alone);
}

// 1.0564 is printed as 1.056, 1.0566 as 1.057.
TEST_CASE("numbers are decided as they are printed") {
    CHECK(chance_below(1.0564, 1.056) == 1.0);
    CHECK(chance_below(1.0566, 1.056) == 0.0);
    CHECK(chance_below(1.056, 1.056) == 1.0);
}

TEST_CASE("words and numbers agree on what is inside the range") {
    Beer beer = plain_beer();
    Style style = style_that_expects(Attribute::mouthfeel_body, 2.0, 4.0);
    style.ranges.final_gravity = Range<SpecificGravity>{1.008 * specific_gravity, 1.014 * specific_gravity};
    const auto points_at = [&](double final_gravity) {
        beer.final_gravity = always(final_gravity * specific_gravity);
        return judge(beer, profile_with(Attribute::mouthfeel_body, 6.0), style, fifty_points()).total.median;
    };
    CHECK(points_at(1.0144) == points_at(1.012));
    CHECK(points_at(1.0146) > points_at(1.012));
}

TEST_CASE("a range with an open end asks nothing on that side") {
    CHECK(points_for_color(60.0, 20.0, {}) == 0.0);
    CHECK(points_for_color(12.0, 20.0, {}) > 0.0);
    CHECK(points_for_color(1.0, {}, 5.0) == 0.0);
    CHECK(points_for_color(12.0, {}, 5.0) > 0.0);
    CHECK(points_for_color(12.0, {}, {}) == 0.0);
}

// Common practice: beyond some 35 SRM all is black to the eye.
TEST_CASE("black is black") {
    CHECK(points_for_color(80.0, 30.0, 40.0) == 0.0);
    CHECK(points_for_color(40.0, 50.0, 60.0) == 0.0);
}

TEST_CASE("color costs points of appearance, hardly any others") {
    Beer beer = plain_beer();
    beer.color.total = always(25.0 * srm);
    Style style;
    style.ranges.color = Range<Color>{3.0 * srm, 6.0 * srm};
    const Sheet sheet = judge(beer, plain_profile(), style, fifty_points());
    CHECK(sheet.at_risk[Section::appearance].median > 1.0);
    CHECK(sheet.at_risk[Section::flavor].median == 0.0);
    REQUIRE(sheet.findings.size() == 1);
    CHECK(id_of(sheet.findings[0]) == "appearance.color.above");
}

TEST_CASE("a beer far past the bitterness of the style is noticed though its word is accepted") {
    Beer beer = plain_beer();
    beer.bitterness.total = always(110.0 * ibu);
    beer.tasted_bitterness = always(110.0 * ibu);
    Style style = style_that_expects(Attribute::flavor_bitterness, 5.0, 7.0);
    style.ranges.bitterness = Range<Bitterness>{40.0 * ibu, 70.0 * ibu};
    const Sheet sheet = judge(beer, profile_with(Attribute::flavor_bitterness, 6.9), style, fifty_points());
    REQUIRE(sheet.findings.size() == 1);
    CHECK(sheet.findings[0].told_by_number);
    CHECK(sheet.findings[0].direction == Direction::above);
}

TEST_CASE("a printed range is stated, whatever is taken for granted of the word for it") {
    Beer beer = plain_beer();
    beer.alcohol = always(7.0 * percent_by_volume);
    const auto finding_where = [&beer](bool assumed) {
        Style style = style_that_expects(Attribute::flavor_alcohol, 0.0, 0.0);
        style.expected[Attribute::flavor_alcohol]->assumed = assumed;
        style.ranges.alcohol = Range<AlcoholByVolume>{3.0 * percent_by_volume, 3.8 * percent_by_volume};
        return judge(beer, profile_with(Attribute::flavor_alcohol, 1.0), style, fifty_points())
            .findings.at(0);
    };
    CHECK(finding_where(true).told_by_number);
    CHECK_FALSE(finding_where(true).assumed);
    CHECK(within(finding_where(true).points, finding_where(false).points, 1e-9));
}

TEST_CASE("findings are named after what they are about, the dearest first") {
    Style style = style_that_expects(Attribute::flavor_bitterness, 2.0, 4.0);
    style.expected[Attribute::mouthfeel_body] = Expectation{4.0, 5.0, false};
    style.expected[Attribute::aroma_roast] = Expectation{0.0, 0.0, false};
    Profile profile = profile_with(Attribute::flavor_bitterness, 6.5);
    profile.level[Attribute::mouthfeel_body] = always(2.5);
    profile.level[Attribute::aroma_roast] = always(4.0);
    const Sheet sheet = judge(plain_beer(), profile, style, fifty_points());
    std::vector<std::string> ids;
    for (const Finding& finding : sheet.findings) {
        ids.push_back(id_of(finding));
        CHECK(finding.noticed > 0.0);
        CHECK(finding.noticed <= 1.0);
    }
    REQUIRE(ids.size() == 3);
    CHECK(ids[0] == "aroma.roast.above");
    CHECK(std::is_sorted(
        sheet.findings.begin(), sheet.findings.end(),
        [](const Finding& first, const Finding& second) { return first.points > second.points; }));
    CHECK(std::count(ids.begin(), ids.end(), "flavor.bitterness.above") == 1);
    CHECK(std::count(ids.begin(), ids.end(), "mouthfeel.body.below") == 1);
}

TEST_CASE("a beer that may be above or below has a finding for each") {
    Profile profile = plain_profile();
    profile.level[Attribute::flavor_roast] = Estimate<double>({0.0, 0.0, 0.0, 0.0, 7.0, 7.0, 7.0, 7.0});
    const Sheet sheet =
        judge(plain_beer(), profile, style_that_expects(Attribute::flavor_roast, 3.0, 4.0), fifty_points());
    REQUIRE(sheet.findings.size() == 2);
    CHECK(sheet.findings[0].direction != sheet.findings[1].direction);
    CHECK(within(sheet.findings[0].noticed, 0.5, 0.01));
    CHECK(within(sheet.findings[1].noticed, 0.5, 0.01));
}

TEST_CASE("a small miss that hardly anyone notices is no finding") {
    const Sheet sheet = sheet_at(Attribute::flavor_roast, 4.2);
    CHECK(sheet.findings.empty());
    CHECK(sheet.total.median < 0.1);
}

TEST_CASE("a deviation tells how far outside, above positive and below negative") {
    const auto deviation_at = [](double level) {
        const Beer beer = plain_beer();
        const Profile profile = profile_with(Attribute::flavor_roast, level);
        const Style style = style_that_expects(Attribute::flavor_roast, 2.0, 4.0);
        return deviations_of(Impression(beer, profile), Yardstick(style, profile.perception), fifty_points())
            .front();
    };
    CHECK(within(deviation_at(5.5).steps.front(), 1.5, 1e-12));
    CHECK(within(deviation_at(0.5).steps.front(), -1.5, 1e-12));
    CHECK(deviation_at(4.0).is_inside);
    CHECK(deviation_at(5.5).attribute == Attribute::flavor_roast);
    CHECK(deviation_at(5.5).name == "flavor.roast");
    CHECK(deviation_at(5.5).section == Section::flavor);
}

TEST_CASE("a guide's habit moves both ends of what it accepts, whichever way it leans") {
    const Beer beer = plain_beer();
    const Style style = style_that_expects(Attribute::flavor_roast, 2.0, 4.0);
    const auto is_inside = [&](double habit, double level) {
        const Profile profile = profile_with(Attribute::flavor_roast, level);
        Yardstick yardstick(style, profile.perception);
        yardstick.habits[Attribute::flavor_roast] = habit;
        return deviations_of(Impression(beer, profile), yardstick, fifty_points()).front().is_inside;
    };
    for (const double habit : {-1.0, 0.0, 1.0}) {
        CAPTURE(habit);
        CHECK(is_inside(habit, 3.9 + habit));
        CHECK(is_inside(habit, 2.1 + habit));
        CHECK_FALSE(is_inside(habit, 4.5 + habit));
        CHECK_FALSE(is_inside(habit, 1.5 + habit));
    }
}

TEST_CASE("what a recipe leaves open is told, and is not counted as checked") {
    Style style = style_that_expects(Attribute::flavor_bitterness, 2.0, 4.0);
    style.expected[Attribute::mouthfeel_carbonation] = Expectation{6.0, 7.0, false};
    Profile profile = profile_with(Attribute::mouthfeel_carbonation, 1.0);
    profile.untold = {Attribute::mouthfeel_carbonation, Attribute::appearance_head_size};
    const Sheet sheet = judge(plain_beer(), profile, style, fifty_points());
    CHECK(sheet.attributes_checked == 1);
    CHECK(sheet.attributes_untold == 1);
    CHECK(sheet.attributes_not_described == static_cast<int>(attribute_count) - 2);
    CHECK(sheet.total.high == 0.0);
}
