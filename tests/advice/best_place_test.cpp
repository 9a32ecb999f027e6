#include "advice/best_place.hpp"

#include <doctest/doctest.h>

#include "advice/ranking.hpp"
#include "judging/tasting.hpp"
#include "tests/support/demo.hpp"
#include "tests/within.hpp"

// What a whole ranking says is what the short cut has to say.

using namespace entrywise;
using namespace entrywise::testing;

TEST_CASE("the best place is the first of the whole ranking, and its points are the same") {
    const LineUp line_up(all_of_the_guide(), usual_handbook());
    Deviates deviates(usual_draws);
    for (const std::string& name : demo_names()) {
        CAPTURE(name);
        const Recipe recipe = demo(name);
        const Ranking ranking = rank(recipe, all_of_the_guide(), usual_handbook(), recipe.style);
        const auto place =
            best_place(taste(recipe, usual_handbook().perception, deviates), line_up, recipe.style);
        REQUIRE(place);
        const RankedStyle& first = ranking.styles.front();
        CHECK(place->best.name.code == first.name.code);
        CHECK(within(place->best.at_risk.median, first.at_risk.median, 1e-9));
        CHECK(within(place->best.distance, first.distance, 1e-9));
        REQUIRE(ranking.declared.has_value() == place->declared.has_value());
        if (place->declared) {
            const RankedStyle& declared = ranking.styles[*ranking.declared];
            CHECK(place->declared->name.code == declared.name.code);
            CHECK(within(place->declared->at_risk.median, declared.at_risk.median, 1e-9));
            REQUIRE(place->sheet);
            CHECK(within(place->sheet->total.high, declared.at_risk.high, 1e-9));
        }
    }
}

TEST_CASE("without styles there is no best place") {
    const LineUp nowhere({}, usual_handbook());
    CHECK_FALSE(best_place(taste(demo("slack-tide"), usual_handbook().perception), nowhere));
}
