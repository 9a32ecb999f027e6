#include "advice/check.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "advice/correction.hpp"
#include "tests/advice/finding_named.hpp"
#include "tests/has.hpp"
#include "tests/support/demo.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/judging.hpp"
#include "tests/support/palate.hpp"
#include "tests/support/recipes.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Check checked(const Recipe& recipe, const Style& style, const std::optional<Style>& base_style = {}) {
    return check(recipe, style, usual_handbook(), base_style);
}

/// What a finding costs once the recipe is changed; nothing where it is gone.
double points_after(const Recipe& changed, const Style& style, const Finding& finding) {
    const Check after = checked(changed, style);
    const AdvisedFinding* still = finding_named(after, id_of(finding));
    return still == nullptr ? 0.0 : still->finding.points;
}

}  // namespace

TEST_CASE("a missing declaration is told with what to write where, and goes when it is written") {
    Recipe recipe = pale_ale();
    const Check without = checked(recipe, guide_style("25B"));
    const AdvisedFinding* missing = finding_named(without, "overall.declaration.below");
    REQUIRE(missing != nullptr);
    CHECK(has(missing->note, "the strength (table, standard or super) and the color (pale or dark)"));
    CHECK(has(missing->corrections.front(), "declares: {strength: ..., color: ...}"));
    recipe.declares = {{"strength", "standard"}, {"color", "pale"}};
    CHECK(finding_named(checked(recipe, guide_style("25B")), "overall.declaration.below") == nullptr);
}

TEST_CASE("a specialty beer is judged with its base, says so, and its notes name the base") {
    Recipe recipe = pale_ale();
    recipe.base_style = StyleName{"bjcp-2021", "18A"};
    recipe.hops = {boiled(magnum(), 60.0, 60.0, 20)};
    const Check with_base = checked(recipe, guide_style("29A"), guide_style("18A"));
    CHECK(has(with_base.basis, "18A Blonde Ale"));
    CHECK(with_base.style.code == "29A");
    const AdvisedFinding* bitter = finding_named(with_base, "flavor.bitterness.above");
    REQUIRE(bitter != nullptr);
    CHECK(has(bitter->note, "Blonde Ale, its base, runs from 15 to 28"));
    const Check without_base = checked(recipe, guide_style("29A"));
    CHECK(has(without_base.basis, "names no base style"));
    CHECK(without_base.sheet.total.median < with_base.sheet.total.median);
}

TEST_CASE("a base declared for a style that varies by nothing is not judged by") {
    const Check result = checked(pale_ale(), guide_style("18B"), guide_style("20B"));
    CHECK_FALSE(result.base_style);
    CHECK(result.basis.empty());
}

TEST_CASE("every strength that is told has a note of its own, and no finding says the contrary") {
    const Check result = checked(pale_ale(), guide_style("18B"));
    REQUIRE(result.strengths.size() == result.sheet.strengths.size());
    for (const AdvisedStrength& advised : result.strengths) {
        CHECK(advised.note.back() == '.');
        for (const AdvisedFinding& finding : result.findings) {
            CHECK(finding.finding.attribute != word_of(advised.strength.attribute));
        }
    }
}

// Common practice: nobody turns a recipe whose middle is right.
TEST_CASE("what may be missed on either side is left as it is") {
    Recipe recipe = pale_ale();
    recipe.hops.front().hop.alpha = {12.0 * percent, 9.0 * percent};
    Style style = style_that_expects(Attribute::flavor_bitterness, 0.0, 7.0);
    const Handbook handbook{fifty_points(), usual_palate(), PhraseBook()};
    const double level = check(recipe, style, handbook).profile.level[Attribute::flavor_bitterness].median();
    style.expected[Attribute::flavor_bitterness] = Expectation{level - 0.1, level + 0.1, false};
    const Check checked = check(recipe, style, handbook);
    for (const char* id : {"flavor.bitterness.above", "flavor.bitterness.below"}) {
        const AdvisedFinding* advised = finding_named(checked, id);
        REQUIRE(advised != nullptr);
        REQUIRE(advised->corrections.size() == 1);
        CHECK(has(advised->corrections.front(), "leave it"));
    }
}

// Common practice: a beer brewed to its strength needs no second change for the warmth that came of it.
TEST_CASE("what a change mends besides is told as mended by it, and is") {
    constexpr std::size_t every = 13;
    int mended = 0;
    check_demo_beers(every, [&mended](const std::string& name, const Check& now) {
        for (const AdvisedFinding& advised : now.findings) {
            if (advised.mended_by.empty()) {
                continue;
            }
            const AdvisedFinding* before = finding_named(now, advised.mended_by);
            REQUIRE(before != nullptr);
            CAPTURE(name);
            CAPTURE(now.style.name);
            CAPTURE(id_of(advised.finding));
            CAPTURE(advised.corrections.front());
            const auto change =
                corrections_of(before->finding, taste_at_middle(now.recipe, usual_palate()), now.beer,
                               now.style, usual_palate(), usual_phrases(), Reach::half_way_too);
            REQUIRE(change.front().recipe);
            CHECK(points_after(*change.front().recipe, now.style, advised.finding) <=
                  0.5 * advised.finding.points);
            ++mended;
        }
    });
    CHECK(mended > 100);
}

TEST_CASE("each of two levers that a beer needs is told, and the same change to two sections as it is") {
    const Check strong = checked(demo("harbor-master"), guide_style("13A"));
    CHECK(has(finding_named(strong, "flavor.alcohol.above")->corrections.front(), "cut all fermentables"));
    CHECK(finding_named(strong, "mouthfeel.warmth.above")->corrections.front() ==
          "the change for alcohol (flavor) mends this too");
    const Check bitter = checked(demo("slack-tide"), guide_style("21A"));
    const AdvisedFinding* const caramel = finding_named(bitter, "flavor.caramel.above");
    const AdvisedFinding* const bitterness = finding_named(bitter, "flavor.bitterness.above");
    REQUIRE(caramel != nullptr);
    REQUIRE(bitterness != nullptr);
    CHECK(has(caramel->corrections.front(), "cut crystal"));
    CHECK(has(bitterness->corrections.front(), "cut Columbus"));
}

TEST_CASE("no beer falls short of what a style wants none of, or goes past the last word of a scale") {
    constexpr std::size_t every = 6;
    int sensed = 0;
    check_demo_beers(every, [&sensed](const std::string& name, const Check& now) {
        for (const Finding& finding : now.sheet.findings) {
            const auto attribute = attribute_named(finding.section, finding.attribute);
            if (!attribute || finding.told_by_number) {
                continue;
            }
            CAPTURE(name);
            CAPTURE(now.style.name);
            CAPTURE(id_of(finding));
            CHECK((finding.direction == Direction::above || finding.accepted_low > 0.0));
            CHECK(
                (finding.direction == Direction::below || finding.accepted_high < highest_level(*attribute)));
            ++sensed;
        }
    });
    CHECK(sensed > 500);
}
