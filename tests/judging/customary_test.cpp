#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "brewing/brew.hpp"
#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "sensing/middle_of_style.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/palate.hpp"
#include "tests/within.hpp"
#include "tools/measure/customary_recipe.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// Points at risk of a beer of each style, brewed as is customary for it, in that style; fewest first.
std::vector<double> points_of_customary_beers(const std::string& guide) {
    std::vector<double> points;
    for (const Style& style : styles_of(guide)) {
        if (const auto recipe = customary_recipe(style, usual_library().ingredients())) {
            const Tasting tasting = taste(*recipe, usual_palate());
            points.push_back(judge(tasting.beer, tasting.profile, style, usual_score_sheet()).total.median);
        }
    }
    std::sort(points.begin(), points.end());
    return points;
}

}  // namespace

TEST_CASE("a customary recipe comes to the middle of the numbers of its style") {
    int in_the_middle = 0;
    int all = 0;
    for (const Style& style : styles_of("bjcp-2021")) {
        const auto recipe = customary_recipe(style, usual_library().ingredients());
        if (!recipe) {
            continue;
        }
        const auto middle = middle_of(style);
        Deviates at_middle(1);
        const Beer beer = brew(*recipe, at_middle);
        CAPTURE(style.code);
        CHECK(within(in(beer.original_gravity.total.median(), specific_gravity),
                     in(middle->original_gravity, specific_gravity), 0.001));
        in_the_middle +=
            within(in(beer.bitterness.total.median(), ibu), in(middle->bitterness, ibu), 1.0) ? 1 : 0;
        ++all;
    }
    CHECK(all > 105);
    CHECK(in_the_middle > all - 6);
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021, and Brewers Association, Beer Style
// Guidelines, 2025, of which no constant was fitted to the second. A beer exactly to style is worth its full
// marks (scoring guides); what is customary is to style.
TEST_CASE("a beer brewed as is customary loses little in its own style") {
    const std::vector<double> first = points_of_customary_beers("bjcp-2021");
    REQUIRE(first.size() > 105);
    CHECK(first[first.size() / 2] < 2.1);
    CHECK(first[3 * first.size() / 4] < 3.2);
    const std::vector<double> second = points_of_customary_beers("ba-2025");
    REQUIRE(second.size() > 115);
    CHECK(second[second.size() / 2] < 1.5);
    CHECK(second[3 * second.size() / 4] < 3.0);
}
