#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "judging/declared.hpp"
#include "judging/kind.hpp"
#include "judging/specialty.hpp"
#include "judging/strength.hpp"
#include "tests/support/judging.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Style named_style(const std::string& code, std::vector<std::string> must_declare) {
    Style style;
    style.code = code;
    style.must_declare = std::move(must_declare);
    return style;
}

std::vector<Declaration> known_declarations() {
    return {{.name = "strength",
             .said = "the strength",
             .keys = {"strength"},
             .choices = {{"25B", {"table", "super"}}}},
            {.name = "base-style",
             .said = "the base style",
             .keys = {"base-style"},
             .by_base_style = true,
             .choices = {}}};
}

std::size_t count_of_missing(const Recipe& recipe, const Style& style) {
    return missing_declarations(recipe, style, known_declarations()).size();
}

/// The kinds missed by a beer whose late hops are of these words, against a style that names floral and
/// spicy.
std::vector<KindMiss> hop_kinds(const std::vector<std::string>& descriptors, double level) {
    Recipe recipe;
    recipe.hops.emplace_back();
    recipe.hops.back().hop.family = "american";
    recipe.hops.back().hop.descriptors = descriptors;
    recipe.hops.back().position = {3, 1};
    Beer beer = plain_beer();
    beer.drivers.hop_aroma.sources = {{"the hop", {3, 1}, 1.0}};
    Profile profile = plain_profile();
    profile.level[Attribute::aroma_hop] = always(level);
    profile.level[Attribute::flavor_hop] = always(level);
    Style style;
    style.hop_notes = {"floral", "spicy"};
    ScoreSheet sheet = fifty_points();
    sheet.other_kind = 1.0;
    return kind_misses(recipe, Impression(beer, profile), style, sheet,
                       {{"pine", "resin"}, {"spicy", "herbal"}});
}

}  // namespace

TEST_CASE("what the entry form must say and the recipe does not is missing") {
    Recipe recipe;
    CHECK(count_of_missing(recipe, named_style("25B", {"strength"})) == 1);
    recipe.declares = {{"Strength", "table"}};
    CHECK(count_of_missing(recipe, named_style("25B", {"strength"})) == 0);
    recipe.declares = {{"strength", " "}};
    CHECK(count_of_missing(recipe, named_style("25B", {"strength"})) == 1);
}

TEST_CASE("the code of a variant says what it is a variant by") {
    CHECK(count_of_missing(Recipe(), named_style("25B-table-pale", {"strength"})) == 0);
    CHECK(count_of_missing(Recipe(), named_style("25B-pale", {"strength"})) == 1);
}

TEST_CASE("a base style is said by the recipe's base style") {
    Recipe recipe;
    CHECK(count_of_missing(recipe, named_style("32A", {"base-style"})) == 1);
    recipe.base_style = StyleName{"bjcp-2021", "18B"};
    CHECK(count_of_missing(recipe, named_style("32A", {"base-style"})) == 0);
}

TEST_CASE("a missing declaration costs points of overall impression, further ones less each") {
    ScoreSheet sheet = fifty_points();
    sheet.missing_declaration = 3.0;
    CHECK_FALSE(declaration_finding(0, sheet));
    const auto one = declaration_finding(1, sheet);
    const auto two = declaration_finding(2, sheet);
    REQUIRE(one);
    REQUIRE(two);
    CHECK(one->points == 3.0);
    CHECK(two->points > 3.0);
    CHECK(two->points < 6.0);
    CHECK(id_of(*one) == "overall.declaration.below");
    const Sheet judged = judge(plain_beer(), plain_profile(), Style(), sheet, {*one});
    CHECK(within(judged.at_risk[Section::overall].median, 3.0, 1e-9));
    CHECK(within(judged.total.median, 3.0, 1e-9));
}

TEST_CASE("a specialty style is judged by its base, except for what it states itself") {
    Style specialty = style_that_expects(Attribute::flavor_smoke, 2.0, 6.0);
    specialty.expected[Attribute::flavor_roast] = Expectation{0.0, 0.0, true};
    specialty.ranges.color = Range<Color>{2.0 * srm, 4.0 * srm};
    Style base = style_that_expects(Attribute::flavor_roast, 3.0, 5.0);
    base.expected[Attribute::flavor_smoke] = Expectation{0.0, 0.0, true};
    base.ranges.color = Range<Color>{20.0 * srm, 40.0 * srm};
    base.ranges.bitterness = Range<Bitterness>{20.0 * ibu, 30.0 * ibu};
    const Style judged = judged_style(specialty, base);
    CHECK(judged.name == specialty.name);
    CHECK(judged.expected[Attribute::flavor_smoke]->low == 2.0);
    CHECK(judged.expected[Attribute::flavor_roast]->low == 3.0);
    CHECK(*judged.ranges.color->high == 4.0 * srm);
    CHECK(*judged.ranges.bitterness->high == 30.0 * ibu);
}

TEST_CASE("hops of another kind than the style names are told, strongest words first") {
    const auto misses = hop_kinds({"pine", "citrus"}, 4.0);
    REQUIRE(misses.size() == 1);
    CHECK(id_of(misses.front().finding) == "aroma.hop_kind.above");
    CHECK(misses.front().finding.points <= 1.0);
    CHECK(misses.front().found == std::vector<std::string>{"pine", "citrus"});
    CHECK(misses.front().asked == std::vector<std::string>{"floral", "spicy"});
}

TEST_CASE("kin count as named, and hops that are hardly sensed are of no kind") {
    CHECK(hop_kinds({"herbal", "pine"}, 4.0).empty());
    CHECK(hop_kinds({"pine", "citrus"}, 1.0).empty());
}

TEST_CASE("what marks a style and is inside is named, nothing that has a finding") {
    Style style = style_that_expects(Attribute::flavor_malt, 3.0, 4.0);
    style.expected[Attribute::aroma_hop] = Expectation{0.0, 4.0, false};
    style.expected[Attribute::flavor_roast] = Expectation{3.0, 4.0, true};
    style.expected[Attribute::flavor_hop] = Expectation{5.0, 6.0, false};
    const Sheet sheet = judge(plain_beer(), plain_profile(), style, fifty_points());
    REQUIRE(sheet.strengths.size() == 1);
    CHECK(sheet.strengths.front().attribute == Attribute::flavor_malt);
}

// Common practice: who finds a beer too bitter does not praise its balance.
TEST_CASE("nothing is praised that shows the same as a finding") {
    Style style = style_that_expects(Attribute::flavor_balance, 4.0, 5.0);
    Profile profile = plain_profile();
    profile.level[Attribute::flavor_balance] = always(4.5);
    profile.level[Attribute::flavor_bitterness] = always(6.0);
    const auto praised = [&] { return judge(plain_beer(), profile, style, fifty_points()).strengths; };
    REQUIRE(praised().size() == 1);
    CHECK(praised().front().attribute == Attribute::flavor_balance);
    style.expected[Attribute::flavor_bitterness] = Expectation{1.0, 3.0, false};
    CHECK(praised().empty());
}
