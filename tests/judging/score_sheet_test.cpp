#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "judging/sheet.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/middle.hpp"
#include "tests/within.hpp"

// What misses cost by the score sheet of the program, styles/sheet.yaml.

using namespace entrywise;
using namespace entrywise::testing;

namespace {

using Levels = std::vector<std::pair<Attribute, double>>;

/// A style that asks for 2 to 4 of each of these, and a beer that has them at these levels.
Sheet sheet_of(const Levels& levels) {
    Style style;
    Profile profile = plain_profile();
    for (const auto& [attribute, level] : levels) {
        style.expected[attribute] = Expectation{2.0, 4.0, false};
        profile.level[attribute] = always(level);
    }
    return judge(plain_beer(), profile, style, usual_score_sheet());
}

double points_of(const Levels& levels) {
    return sheet_of(levels).total.median;
}

double flavor_of(const Levels& levels) {
    return sheet_of(levels).at_risk[Section::flavor].median;
}

/// A beer of one level against a style that accepts this much of it.
double points_at(Attribute attribute, double level, double low, double high) {
    Profile profile = plain_profile();
    profile.level[attribute] = always(level);
    return judge(plain_beer(), profile, style_that_expects(attribute, low, high), usual_score_sheet())
        .total.median;
}

Sheet black_beer_of_a_pale_style() {
    Beer beer = plain_beer();
    beer.color.total = always(40.0 * srm);
    Style style;
    style.ranges.color = Range<Color>{2.0 * srm, 4.0 * srm};
    return judge(beer, plain_profile(), style, usual_score_sheet());
}

/// An American IPA that is right in everything but the hops.
Sheet ipa_with_hops(double aroma, double flavor) {
    const Style ipa = guide_style("21A");
    const MiddleOfStyle middle = *middle_of(ipa);
    Profile profile = profile_of(ipa, middle);
    profile.level[Attribute::aroma_hop] = always(aroma);
    profile.level[Attribute::flavor_hop] = always(flavor);
    return judge(beer_of(middle), profile, ipa, usual_score_sheet());
}

}  // namespace

// Common practice: a beer that is too bitter tastes out of balance and drier for it, and is marked down once.
TEST_CASE("too bitter, too dry and out of balance cost in flavor what the dearest of them costs") {
    const std::pair bitter{Attribute::flavor_bitterness, 6.4};
    const std::pair dry{Attribute::flavor_finish, 0.4};
    const std::pair unbalanced{Attribute::flavor_balance, 5.6};
    const double alone = flavor_of({bitter});
    CHECK(alone > flavor_of({dry}));
    CHECK(alone > 1.0);
    CHECK(within(flavor_of({bitter, dry, unbalanced}), alone, 1e-9));
    CHECK(within(flavor_of({bitter, dry}), alone, 1e-9));
}

TEST_CASE("the order of the causes does not matter for what is one miss") {
    ScoreSheet turned = usual_score_sheet();
    std::reverse(turned.causes.begin(), turned.causes.end());
    Style style = style_that_expects(Attribute::flavor_bitterness, 2.0, 4.0);
    style.expected[Attribute::flavor_finish] = Expectation{2.0, 4.0, false};
    Profile profile = plain_profile();
    profile.level[Attribute::flavor_bitterness] = always(6.0);
    profile.level[Attribute::flavor_finish] = always(0.0);
    CHECK(within(judge(plain_beer(), profile, style, turned).total.median,
                 judge(plain_beer(), profile, style, usual_score_sheet()).total.median, 1e-9));
}

TEST_CASE("too bitter and too sweet are two misses") {
    const std::pair bitter{Attribute::flavor_bitterness, 6.4};
    const std::pair sweet{Attribute::flavor_finish, 5.6};
    CHECK(flavor_of({bitter, sweet}) > flavor_of({bitter}) + 0.5);
}

// Wolfe, Beer Evaluation and the Judging Process: mouthfeel is scored from two points up.
TEST_CASE("mouthfeel loses at most three of its five points") {
    const Sheet sheet = sheet_of({{Attribute::mouthfeel_body, 7.0},
                                  {Attribute::mouthfeel_carbonation, 0.0},
                                  {Attribute::mouthfeel_creaminess, 7.0},
                                  {Attribute::mouthfeel_astringency, 7.0},
                                  {Attribute::mouthfeel_warmth, 7.0}});
    CHECK(sheet.at_risk[Section::mouthfeel].high <= 3.0);
    CHECK(sheet.at_risk[Section::mouthfeel].median > 2.0);
}

// Wolfe, Beer Evaluation and the Judging Process: one point of appearance goes by color, and half a point
// more for another style's color is the sheet's own. Common practice: color alone spoils no beer.
TEST_CASE("a wrong color alone costs appearance, hardly any overall and nothing else") {
    const Sheet sheet = black_beer_of_a_pale_style();
    CHECK(sheet.at_risk[Section::appearance].median > 1.0);
    CHECK(sheet.at_risk[Section::appearance].median <= 1.5);
    CHECK(sheet.at_risk[Section::overall].median > 0.0);
    CHECK(sheet.at_risk[Section::overall].median < 0.5 + 1e-9);
    for (const Section section : {Section::aroma, Section::flavor, Section::mouthfeel}) {
        CHECK(sheet.at_risk[section].median == 0.0);
    }
}

// Common practice: a stout is opaque because it is dark, and nobody marks one down for being clear; a hazy
// beer that is bright is out of style.
TEST_CASE("a beer that the guide wants opaque is not marked down for being clear") {
    CHECK(points_at(Attribute::appearance_clarity, 4.0, 0.0, 0.0) == 0.0);
    CHECK(points_at(Attribute::appearance_clarity, 4.0, 1.0, 2.0) > 0.3);
}

// Wolfe, Beer Evaluation and the Judging Process: one point each for clarity and head.
TEST_CASE("clarity and head cost at most a point of appearance each") {
    CHECK(sheet_of({{Attribute::appearance_clarity, 0.0}}).at_risk[Section::appearance].median <= 1.0);
    CHECK(sheet_of({{Attribute::appearance_head_size, 0.0}, {Attribute::appearance_head_retention, 0.0}})
              .at_risk[Section::appearance]
              .median <= 1.0);
}

// Common practice: in a hop-led style a judge takes five to ten points where the hops are not there.
TEST_CASE("a trait that the style is known by and that is missing costs five to ten points") {
    const double at_home = ipa_with_hops(6.0, 5.0).total.median;
    CHECK(at_home < 1.0);
    const double without_aroma = ipa_with_hops(0.0, 5.0).total.median;
    const double without_any = ipa_with_hops(0.0, 0.0).total.median;
    CHECK(without_aroma > 5.0);
    CHECK(without_any > without_aroma);
    CHECK(without_any < 10.1);
}

TEST_CASE("a trace that nobody can name is as good as missing where the style asks for low") {
    const double none = points_at(Attribute::aroma_smoke, 0.0, 2.0, 6.0);
    CHECK(within(points_at(Attribute::aroma_smoke, 0.4, 2.0, 6.0), none, 1e-9));
    const double very_low = points_at(Attribute::aroma_smoke, 1.0, 2.0, 6.0);
    CHECK(very_low > 0.0);
    CHECK(none > 2.0 * very_low);
}

TEST_CASE("what is not allowed costs from where it is noticed, and the more the more of it") {
    CHECK(points_at(Attribute::flavor_roast, 0.0, 0.0, 0.0) == 0.0);
    CHECK(points_at(Attribute::flavor_roast, 0.2, 0.0, 0.0) < 0.1);
    const double very_low = points_at(Attribute::flavor_roast, 1.0, 0.0, 0.0);
    const double low = points_at(Attribute::flavor_roast, 2.0, 0.0, 0.0);
    const double medium = points_at(Attribute::flavor_roast, 4.0, 0.0, 0.0);
    CHECK(very_low > 0.5);
    CHECK(low > 2.0 * very_low);
    CHECK(medium > low);
}

TEST_CASE("what is optional never costs when it is absent") {
    for (const Attribute attribute : all_attributes()) {
        CAPTURE(word_of(section_of(attribute)));
        CAPTURE(word_of(attribute));
        CHECK(points_at(attribute, 0.0, 0.0, 4.0) == 0.0);
    }
}

// Common practice: nobody marks a beer down for a head that lasts too well, nor for being free of astringency
// or of the faults of fermentation.
TEST_CASE("what no judge minds is not charged") {
    CHECK(points_of({{Attribute::appearance_head_retention, 7.0}}) == 0.0);
    CHECK(points_of({{Attribute::appearance_head_retention, 0.0}}) > 0.3);
    for (const Attribute attribute :
         {Attribute::mouthfeel_astringency, Attribute::flavor_diacetyl, Attribute::aroma_diacetyl,
          Attribute::aroma_dms, Attribute::aroma_sulfur}) {
        CAPTURE(word_of(attribute));
        CHECK(points_of({{attribute, 0.0}}) == 0.0);
        CHECK(points_of({{attribute, 7.0}}) > 3.0);
    }
}

TEST_CASE("what is not charged is no finding either") {
    CHECK(sheet_of({{Attribute::appearance_head_retention, 7.0}}).findings.empty());
}

TEST_CASE("a second miss of a section costs less than it would alone") {
    const std::pair roast{Attribute::flavor_roast, 7.0};
    const std::pair smoke{Attribute::flavor_smoke, 7.0};
    const std::pair salt{Attribute::flavor_salt, 7.0};
    const double two = flavor_of({roast, smoke});
    const double three = flavor_of({roast, smoke, salt});
    CHECK(two < flavor_of({roast}) + flavor_of({smoke}) - 0.5);
    CHECK(three > two);
    CHECK(three < two + flavor_of({salt}) - 0.5);
}

// Common practice: of ten points lost some two are lost in overall impression.
TEST_CASE("about a fifth of what a miss costs goes to overall impression") {
    for (const Attribute attribute : all_attributes()) {
        const Sheet sheet = sheet_of({{attribute, 6.0}});
        if (sheet.total.median == 0.0) {
            continue;
        }
        CAPTURE(word_of(section_of(attribute)));
        CAPTURE(word_of(attribute));
        const double share = sheet.at_risk[Section::overall].median / sheet.total.median;
        CHECK(share > 0.1);
        CHECK(share < 0.31);
    }
}

// Common practice: of ten points lost some two are lost in overall impression.
TEST_CASE("overall impression loses no more than its part where the flavor is right and the nose is not") {
    const Sheet sheet = sheet_of({{Attribute::aroma_hop, 7.0}, {Attribute::flavor_hop, 3.0}});
    CHECK(sheet.at_risk[Section::flavor].median == 0.0);
    CHECK(sheet.at_risk[Section::aroma].median > 2.0);
    CHECK(sheet.at_risk[Section::overall].median / sheet.total.median < 0.3);
}

// Common practice of judges' reports: a beer a little flat, with a head that falls, loses about three points.
TEST_CASE("somewhat low carbonation with a weak head costs about three points in all") {
    const double points =
        points_of({{Attribute::mouthfeel_carbonation, 0.8}, {Attribute::appearance_head_retention, 0.8}});
    CHECK(within(points, 3.0, 1.0));
}

// Beer Judge Certification Program, Beer Scoresheet: points of the sections, bands and courtesy floor.
TEST_CASE("the sheet has fifty points, six bands without a gap, and a floor of thirteen") {
    const ScoreSheet& sheet = usual_score_sheet();
    CHECK(sheet.points[Section::aroma] == 12.0);
    CHECK(sheet.points[Section::appearance] == 3.0);
    CHECK(sheet.points[Section::flavor] == 20.0);
    CHECK(sheet.points[Section::mouthfeel] == 5.0);
    CHECK(sheet.points[Section::overall] == 10.0);
    CHECK(sheet.courtesy_floor == 13.0);
    const std::vector<std::pair<std::string, double>> ends{{"problematic", 13.0}, {"fair", 20.0},
                                                           {"good", 29.0},        {"very good", 37.0},
                                                           {"excellent", 44.0},   {"outstanding", 50.0}};
    REQUIRE(sheet.bands.size() == ends.size());
    for (std::size_t band = 0; band < ends.size(); ++band) {
        CHECK(sheet.bands[band].name == ends[band].first);
        CHECK(sheet.bands[band].high == ends[band].second);
    }
}

TEST_CASE("however bad the beer, the score stays at the courtesy floor and in the lowest band") {
    Levels everything;
    for (const Attribute attribute : all_attributes()) {
        everything.emplace_back(attribute, 7.0);
    }
    const Sheet sheet = sheet_of(everything);
    CHECK(sheet.total.median > 30.0);
    CHECK(sheet.if_otherwise_well_made.low == 13.0);
    CHECK(sheet.if_otherwise_well_made.bands == std::vector<std::string>{"problematic"});
}
