#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "judging/tasting.hpp"
#include "reading/recipe_reader.hpp"
#include "reading/yaml_document.hpp"
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

}  // namespace

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
        REQUIRE(is_finite(tasting.beer.original_gravity.total));
        REQUIRE(is_finite(tasting.beer.final_gravity));
        REQUIRE(is_finite(tasting.beer.alcohol));
        REQUIRE(is_finite(tasting.beer.bitterness.total));
        REQUIRE(is_finite(tasting.beer.color.total));
        ++tasted;
    });
    CHECK(tasted > 100);
}
