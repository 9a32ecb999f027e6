#include "advice/caution_of_change.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "advice/check.hpp"
#include "tests/support/guide.hpp"
#include "tests/support/recipes.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Recipe with_base_malt(double kilograms) {
    Recipe recipe = pale_ale();
    recipe.grist[0].mass = kilograms * kilogram;
    return recipe;
}

std::vector<Caution> cautions_of_advice(const Recipe& recipe, const std::vector<Correction>& corrections) {
    Deviates dice(64);
    const Beer beer = brew(recipe, dice);
    return cautions_of_corrections(corrections, recipe, beer, dice);
}

bool tells(const std::vector<Caution>& cautions, const std::string& text) {
    return std::any_of(cautions.begin(), cautions.end(), [&text](const Caution& caution) {
        return caution.text.starts_with("If changed as advised: ") &&
               caution.text.find(text) != std::string::npos;
    });
}

}  // namespace

// Common practice: usual beer bottles are made for about 3 volumes, and a cask for half of that.
TEST_CASE("advice that raises the pressure comes with the caution for it") {
    const Recipe flat = carbonated_to(1.0);
    const auto cautions = cautions_of_advice(flat, {{"carbonate to 3.4 vol", carbonated_to(3.4)}});
    REQUIRE(cautions.size() == 1);
    CHECK(cautions[0].kind == "pressure");
    CHECK(tells(cautions, "thick bottles"));
    Recipe cask = flat;
    cask.conditioning.bottled = false;
    Recipe lively = carbonated_to(3.4);
    lively.conditioning.bottled = false;
    CHECK(tells(cautions_of_advice(cask, {{"carbonate to 3.4 vol", lively}}), "a cask does not bear"));
    CHECK(cautions_of_advice(flat, {{"carbonate to 2.5 vol", carbonated_to(2.5)}}).empty());
}

TEST_CASE("advice brings a caution once, and none that the recipe has already or that is in words alone") {
    const Recipe flat = carbonated_to(1.0);
    const Correction lively{"carbonate to 3.4 vol", carbonated_to(3.4)};
    CHECK(cautions_of_advice(flat, {lively, lively}).size() == 1);
    CHECK(cautions_of_advice(flat, {{"more gas", std::nullopt}}).empty());
    CHECK(cautions_of_advice(carbonated_to(3.6), {lively}).empty());
    CHECK(tells(cautions_of_advice(carbonated_to(3.2), {{"carbonate to 3.8 vol", carbonated_to(3.8)}}),
                "may reach 3.8 volumes"));
}

TEST_CASE("a beer that is made weaker is not cautioned anew for its alcohol, one made stronger is") {
    CHECK(cautions_of_advice(with_base_malt(12.0), {{"less malt", with_base_malt(10.0)}}).empty());
    CHECK(tells(cautions_of_advice(with_base_malt(10.0), {{"more malt", with_base_malt(12.0)}}), "alcohol"));
    CHECK(tells(cautions_of_advice(with_base_malt(5.0), {{"more malt", with_base_malt(12.0)}}), "alcohol"));
}

TEST_CASE("a check tells the cautions of its advice after those of the recipe") {
    const Check result = check(carbonated_to(1.0), guide_style("10A"), usual_handbook());
    REQUIRE(result.cautions.size() > 1);
    CHECK_FALSE(tells({result.cautions.front()}, ""));
    CHECK(tells({result.cautions.back()}, "volumes"));
}
