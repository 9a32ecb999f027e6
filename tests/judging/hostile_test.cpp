#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "judging/tasting.hpp"
#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"
#include "tests/support/demo.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/palate.hpp"
#include "tests/support/spoilt.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

template <class Quantity>
bool is_finite(const Estimate<Quantity>& estimate) {
    const auto& draws = estimate.draws();
    return std::all_of(draws.begin(), draws.end(),
                       [](const Quantity& draw) { return std::isfinite(draw.value()); });
}

bool is_finite(const Beer& beer) {
    return is_finite(beer.original_gravity.total) && is_finite(beer.final_gravity) &&
           is_finite(beer.alcohol) && is_finite(beer.bitterness.total) && is_finite(beer.color.total);
}

bool is_finite(const Profile& profile) {
    const auto sensed = all_attributes();
    return std::all_of(sensed.begin(), sensed.end(), [&profile](Attribute attribute) {
        const auto& draws = profile.level[attribute].draws();
        return std::all_of(draws.begin(), draws.end(), [](double level) { return std::isfinite(level); });
    });
}

template <class Addition>
std::size_t taste_without_each(Recipe& recipe, std::vector<Addition>& additions) {
    for (Addition& addition : additions) {
        const auto mass = std::exchange(addition.mass, 0.0 * gram);
        CAPTURE(addition.position.line);
        constexpr std::size_t few = 8;
        const Tasting tasting = taste(recipe, usual_palate(), few);
        CHECK(is_finite(tasting.beer));
        CHECK(is_finite(tasting.profile));
        addition.mass = mass;
    }
    return additions.size();
}

}  // namespace

// A search for what to change turns masses to nothing.
TEST_CASE("an ingredient of which there is nothing leaves every number finite") {
    std::size_t tasted = 0;
    for (const std::string& name : demo_names()) {
        CAPTURE(name);
        Recipe recipe = demo(name);
        tasted += taste_without_each(recipe, recipe.grist) + taste_without_each(recipe, recipe.hops) +
                  taste_without_each(recipe, recipe.extras);
    }
    CHECK(tasted > 80);
}

TEST_CASE("whatever is read as a recipe has finite numbers") {
    // The recipe without what is measured, so that everything is estimated.
    std::string text = recipe_of_the_readme();
    text.resize(text.find("measured:"));
    const auto document = yaml_document(text, "file");
    REQUIRE(document);
    std::size_t tasted = 0;
    spoil_each_value(*document, [&](const Node& spoilt) {
        const auto recipe = read_recipe(spoilt, usual_library().ingredients(), "file");
        if (!recipe) {
            return;
        }
        constexpr std::size_t few = 16;
        const Tasting tasting = taste(*recipe, usual_palate(), few);
        REQUIRE(is_finite(tasting.beer));
        ++tasted;
    });
    CHECK(tasted > 100);
}
