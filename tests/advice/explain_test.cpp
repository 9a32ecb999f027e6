#include "advice/explain.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "tests/has.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/recipes.hpp"
#include "tests/support/remarks.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

ExplainedNote explained(const Recipe& recipe, const std::string& note, const std::optional<Style>& style) {
    const Explanation explanation = explain(recipe, style, {{note}, {}}, usual_handbook(), usual_remarks());
    REQUIRE(explanation.notes.size() == 1);
    return explanation.notes.front();
}

ExplainedRemark remark_in(const Recipe& recipe, const std::string& note, const std::optional<Style>& style) {
    const ExplainedNote explained_note = explained(recipe, note, style);
    REQUIRE_FALSE(explained_note.remarks.empty());
    return explained_note.remarks.front();
}

bool has_source(const std::vector<Pull>& pulls, const std::string& source) {
    return std::any_of(pulls.begin(), pulls.end(), [&](const Pull& pull) { return pull.source == source; });
}

/// Far more bittering hops than any pale ale bears.
Recipe bitter_ale() {
    Recipe recipe = pale_ale();
    recipe.hops = {boiled(magnum(), 90.0, 60.0, 20), boiled(cascade(), 15.0, 5.0, 21)};
    return recipe;
}

}  // namespace

// What comes from what: common practice of brewing.

TEST_CASE("a beer far too bitter explains the note, and the bittering hops stand first") {
    const ExplainedRemark remark = remark_in(bitter_ale(), "too bitter", guide_style("18B"));
    CHECK(remark.explained > 0.9);
    REQUIRE_FALSE(remark.relief.empty());
    CHECK(has(remark.relief.front().source, "Magnum"));
    CHECK(remark.relief.front().change < 0.0);
    CHECK_FALSE(remark.corrections.empty());
    CHECK(remark.elsewhere.empty());
}

TEST_CASE("the opposite note is not explained, and fermentation, handling or serving are named") {
    const ExplainedRemark remark = remark_in(bitter_ale(), "not bitter enough", guide_style("18B"));
    CHECK(remark.explained < 0.1);
    CHECK(remark.corrections.empty());
    CHECK_FALSE(remark.elsewhere.empty());
}

TEST_CASE("too much and too little of one thing share the chance between them") {
    const Recipe recipe = pale_ale();
    const double above = remark_in(recipe, "too bitter", std::nullopt).explained;
    const double below = remark_in(recipe, "not bitter enough", std::nullopt).explained;
    CHECK(within(above + below, 1.0, 1e-9));
}

TEST_CASE("caramel comes from crystal malt, and shares add up to one") {
    Recipe recipe = pale_ale();
    recipe.grist = {grist(pale_ale_malt(), 4.0, GristUse::mash, 10),
                    grist(crystal_malt(), 1.2, GristUse::mash, 11)};
    const ExplainedRemark remark = remark_in(recipe, "too much caramel", guide_style("18B"));
    CHECK(remark.explained > 0.5);
    REQUIRE_FALSE(remark.relief.empty());
    CHECK(remark.relief.front().source == crystal_malt().name);
    double shares = 0.0;
    for (const Pull& pull : remark.relief) {
        shares += pull.share;
    }
    CHECK(within(shares, 1.0, 1e-9));
}

TEST_CASE("a thin beer is made fuller by a warmer mash and a yeast that leaves more, never by the opposite") {
    const ExplainedRemark remark = remark_in(pale_ale(), "thin", guide_style("18B"));
    for (const Pull& pull : remark.relief) {
        CAPTURE(pull.step);
        CHECK(pull.change > 0.0);
        CHECK_FALSE(has(pull.step, "mash 2 °C cooler"));
        CHECK_FALSE(has(pull.step, "points higher"));
    }
    CHECK(has_source(remark.relief, "attenuation"));
    CHECK(has_source(remark.relief, "mash"));
}

TEST_CASE("a fault of execution is never the recipe's") {
    const ExplainedNote note = explained(pale_ale(), "light-struck", guide_style("18B"));
    REQUIRE(note.explained.has_value());
    CHECK(*note.explained == 0.0);
    CHECK(has(note.remarks.front().elsewhere, "brown"));
}

TEST_CASE("praise has nothing to explain, and words that are not known are told") {
    const ExplainedNote praise = explained(pale_ale(), "lovely malt", guide_style("18B"));
    CHECK_FALSE(praise.explained.has_value());
    CHECK(praise.praises == std::vector<std::string>{"lovely malt"});
    const ExplainedNote unknown = explained(pale_ale(), "astringant", guide_style("18B"));
    REQUIRE(unknown.unheard.size() == 1);
    CHECK(unknown.unheard.front().unknown.front().nearest == "astringent");
}

TEST_CASE("a measured final gravity far above what the recipe makes is what a sweet beer comes from") {
    Recipe recipe = pale_ale();
    recipe.measured.final_gravity = {1.024 * specific_gravity, 0.0 * specific_gravity};
    const ExplainedRemark remark = remark_in(recipe, "finishes too sweet", guide_style("18B"));
    CHECK(remark.explained > 0.5);
    CHECK(has(remark.measured, "1.024"));
    CHECK(has(remark.elsewhere, "stopped early"));
    CHECK(remark_in(pale_ale(), "finishes too sweet", guide_style("18B")).measured.empty());
}

TEST_CASE("where a style is silent on sweetness its finish tells") {
    const ExplainedRemark remark = remark_in(pale_ale(), "too sweet", guide_style("21A"));
    REQUIRE(remark.standings.size() == 1);
    CHECK(remark.standings.front().by_style);
    CHECK(remark.standings.front().finding.attribute == "finish");
}

TEST_CASE("the feedback names note, perception and what would help, and gives no points") {
    const Explanation explanation =
        explain(bitter_ale(), guide_style("18B"), {{"too bitter", "nice head"}, {}}, usual_handbook(),
                usual_remarks());
    CHECK(has(explanation.feedback, "too bitter"));
    CHECK(has(explanation.feedback, "nice head"));
    CHECK(has(explanation.feedback, "Magnum"));
    CHECK_FALSE(has(explanation.feedback, "points"));
    CHECK(explanation.scores.empty());
}

TEST_CASE("a section marked far down is told with the findings behind it, one as expected is not") {
    SectionScores scores;
    scores[Section::flavor] = 3.0;
    scores[Section::appearance] = 2.5;
    const Explanation explanation =
        explain(bitter_ale(), guide_style("18B"), {{}, scores}, usual_handbook(), usual_remarks());
    REQUIRE(explanation.scores.size() == 2);
    CHECK_FALSE(explanation.scores[0].comparison.parts.has_value());
    CHECK(explanation.scores[0].elsewhere.empty());
    REQUIRE(explanation.scores[1].comparison.parts.has_value());
    CHECK(*explanation.scores[1].comparison.parts == Direction::below);
    CHECK_FALSE(explanation.scores[1].behind.empty());
    CHECK_FALSE(explanation.scores[1].elsewhere.empty());
}
