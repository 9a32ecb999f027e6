#include "judging/declared.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/support/guide.hpp"
#include "tests/support/middle.hpp"

// What must be declared: Beer Judge Certification Program, Beer Style Guidelines, 2021.

using namespace entrywise;
using namespace entrywise::testing;

namespace {

using Names = std::vector<std::string>;

Recipe recipe_that_declares(std::map<std::string, std::string> declares) {
    Recipe recipe;
    recipe.declares = std::move(declares);
    return recipe;
}

Names missing_in(const Recipe& recipe, const std::string& code) {
    Names names;
    for (const Declaration& declaration :
         missing_declarations(recipe, guide_style(code), usual_phrases().declarations)) {
        names.push_back(declaration.name);
    }
    return names;
}

}  // namespace

TEST_CASE("a saison must say its strength and its color, a plain style nothing") {
    CHECK(missing_in(Recipe(), "25B") == Names{"strength", "color"});
    CHECK(missing_in(recipe_that_declares({{"strength", "standard"}}), "25B") == Names{"color"});
    CHECK(missing_in(recipe_that_declares({{"color", "pale"}, {"strength", "table"}}), "25B").empty());
    CHECK(missing_in(Recipe(), "21A").empty());
    CHECK(missing_in(Recipe(), "18A").empty());
}

TEST_CASE("the code of a variant says it all, or a part") {
    CHECK(missing_in(Recipe(), "25B-super-dark").empty());
    CHECK(missing_in(Recipe(), "10C-dark").empty());
    CHECK(missing_in(Recipe(), "21B-black") == Names{"strength"});
    CHECK(missing_in(Recipe(), "21B-session") == Names{"type-or-description"});
}

TEST_CASE("a fruit beer must name its fruit and its base") {
    Recipe recipe = recipe_that_declares({{"fruit", "raspberry"}});
    CHECK(missing_in(recipe, "29A") == Names{"base-style-or-description"});
    recipe.base_style = StyleName{"bjcp-2021", "18A"};
    CHECK(missing_in(recipe, "29A").empty());
    CHECK(missing_in(recipe_that_declares({{"Fruit", "raspberry"}, {"description", "a pale ale"}}), "29A")
              .empty());
}

TEST_CASE("the wood of a smoked beer is asked only of those that have any") {
    Recipe recipe;
    recipe.base_style = StyleName{"bjcp-2021", "11B"};
    CHECK(missing_in(recipe, "32A").empty());
}

TEST_CASE("every further declaration costs half of the one before, and all go to overall impression") {
    const ScoreSheet& sheet = usual_score_sheet();
    CHECK_FALSE(declaration_finding(0, sheet));
    const double one = declaration_finding(1, sheet)->points;
    const double two = declaration_finding(2, sheet)->points;
    const double three = declaration_finding(3, sheet)->points;
    CHECK(one == 3.0);
    CHECK(two == 4.5);
    CHECK(three == 5.25);
    const Sheet judged =
        judge(plain_beer(), plain_profile(), Style(), sheet, {*declaration_finding(2, sheet)});
    CHECK(judged.at_risk[Section::overall].median == doctest::Approx(4.5));
    CHECK(judged.at_risk[Section::flavor].median == 0.0);
}
