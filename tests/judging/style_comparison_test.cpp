#include "judging/style_comparison.hpp"

#include <doctest/doctest.h>

#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

using Words = std::vector<std::string>;

TEST_CASE("words of one list alone are told from those of both, kin counting as the same") {
    const Kin kin{{"citrus", "grapefruit"}};
    const WordsApart apart = words_apart({"grapefruit", "pine"}, {"citrus", "floral"}, kin);
    CHECK(apart.both == Words{"grapefruit"});
    CHECK(apart.first_alone == Words{"pine"});
    CHECK(apart.second_alone == Words{"floral"});
    CHECK(words_apart({"grapefruit"}, {"citrus"}).both.empty());
}

TEST_CASE("no beer is both a pilsner and an imperial stout, while one may be a pale ale and an IPA") {
    // Beer Judge Certification Program, Beer Style Guidelines, 2021: 40 to 50 IBU and 5.5 to 6.2 % lie in
    // both 18B and 21A.
    CHECK_FALSE(exclusive(compared(guide_style("5D"), guide_style("20C"))).empty());
    CHECK(exclusive(compared(guide_style("18B"), guide_style("21A"))).empty());
}

TEST_CASE("what one style alone speaks of is named, what it only takes for granted is not") {
    Style first;
    Style second;
    first.expected[Attribute::flavor_salt] = Expectation{1.0, 3.0, false};
    first.expected[Attribute::flavor_smoke] = Expectation{0.0, 0.0, true};
    const StyleComparison comparison = compared(first, second);
    CHECK(comparison.first_alone == std::vector{Attribute::flavor_salt});
    CHECK(comparison.second_alone.empty());
    CHECK(comparison.contrasts.empty());
}

TEST_CASE("styles without numbers and styles that vary are compared by what they lay down") {
    const StyleComparison fruit = compared(guide_style("29A"), guide_style("21A"));
    CHECK(fruit.first.varies);
    CHECK(fruit.contrasts.size() == 1);
    CHECK(fruit.second_alone.size() > 10);
    CHECK(exclusive(fruit).empty());
}
