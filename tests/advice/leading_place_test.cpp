#include "advice/leading_place.hpp"

#include <doctest/doctest.h>

#include "advice/ranking.hpp"
#include "judging/tasting.hpp"
#include "tests/support/demo.hpp"
#include "tests/within.hpp"

// What a whole ranking says is what the short cut has to say.

using namespace entrywise;
using namespace entrywise::testing;

namespace {

std::optional<EntryPlace> leading_among(const Tasting& tasting, const LineUp& line_up,
                                        const std::optional<JudgedAlready>& judged_already = {}) {
    return leading_place(tasting, Impression(tasting.beer, tasting.profile), line_up, judged_already);
}

}  // namespace

TEST_CASE("the leading place is the first of the whole ranking, and its points are the same") {
    const LineUp line_up(all_of_the_guide(), usual_handbook());
    Deviates deviates(usual_draws);
    for (const std::string& name : demo_names()) {
        CAPTURE(name);
        const Recipe recipe = demo(name);
        const RankedStyle first = rank(recipe, all_of_the_guide(), usual_handbook()).styles.front();
        const auto place = leading_among(taste(recipe, usual_handbook().perception, deviates), line_up);
        REQUIRE(place);
        CHECK(place->name.code == first.name.code);
        CHECK(within(place->at_risk.median, first.at_risk.median, 1e-9));
        CHECK(within(place->at_risk.high, first.at_risk.high, 1e-9));
        CHECK(within(place->distance, first.distance, 1e-9));
    }
}

TEST_CASE("without styles there is no leading place") {
    const std::vector<Style> none;
    const LineUp nowhere(none, usual_handbook());
    CHECK_FALSE(leading_among(taste(demo("slack-tide"), usual_handbook().perception), nowhere));
}

TEST_CASE("points that were found before are not worked out again") {
    const LineUp line_up(all_of_the_guide(), usual_handbook());
    const Tasting tasting = taste(demo("slack-tide"), usual_handbook().perception);
    const auto alone = leading_among(tasting, line_up);
    REQUIRE(alone);
    const std::vector<double> found_before(usual_draws, alone->at_risk.median - 0.25);
    const auto told =
        leading_among(tasting, line_up, JudgedAlready{alone->name, Estimate<double>(found_before)});
    REQUIRE(told);
    CHECK(told->name == alone->name);
    CHECK(within(told->at_risk.median, alone->at_risk.median - 0.25, 1e-9));
}
