#include "brewing/acidity.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double sour_with(const std::string& name, std::optional<Mass> mass, std::optional<Volume> volume) {
    Recipe recipe = pale_ale();
    ExtraAddition acid;
    acid.name = name;
    acid.kind = ExtraKind::acid;
    acid.mass = mass;
    acid.volume = volume;
    acid.use = ExtraUse::fermenter;
    recipe.extras = {acid};
    return brew_at_middle(recipe).drivers.sour.median();
}

}  // namespace

// Meilgaard, MBAA Technical Quarterly 12, 1975, from memory: lactic acid is noticed from 0.4 g/L.
TEST_CASE("lactic acid is just noticed at its threshold") {
    CHECK(sourness_of_acid(Concentration()) == 0.0);
    CHECK(sourness_of_acid(0.2 * gram_per_liter) > 0.2);
    CHECK(sourness_of_acid(0.2 * gram_per_liter) < 0.8);
    CHECK(within(sourness_of_acid(0.4 * gram_per_liter), 1.0, 0.3));
}

// Berliner Weisse holds some 3 to 6 g/L of lactic acid, and its sourness is called medium to high: Beer Judge
// Certification Program, Beer Style Guidelines, 2021 (words); acid from memory.
TEST_CASE("the acid of a Berliner Weisse is of medium to high sourness") {
    CHECK(sourness_of_acid(3.0 * gram_per_liter) >= 3.5);
    CHECK(sourness_of_acid(6.0 * gram_per_liter) <= 6.0);
}

// Common practice: doubling the acid does not double the sourness.
TEST_CASE("each gram of acid is tasted less than the one before") {
    CHECK(sourness_of_acid(4.0 * gram_per_liter) < 1.6 * sourness_of_acid(2.0 * gram_per_liter));
    CHECK(sourness_of_acid(100.0 * gram_per_liter) <= 7.0);
}

// 88 % lactic acid weighs 1.2 kg/L: common practice.
TEST_CASE("a syrup counts the same by volume and by mass") {
    const double by_volume = sour_with("Lactic acid 88 %", std::nullopt, 50.0 * milliliter);
    CHECK(within(by_volume, sour_with("lactic acid", 60.0 * gram, std::nullopt), 1e-9));
    CHECK(by_volume > 2.0);
}

TEST_CASE("an acid without an amount only sets a pH") {
    CHECK(sour_with("lactic acid", std::nullopt, std::nullopt) == 0.0);
}

// 50 mL of 88 % lactic acid weigh 60 g and hold 52.8 g; citric, tartaric and malic acid are sold dry: common
// practice.
TEST_CASE("a dry acid counts whole, a syrup by what is in it") {
    const double syrup = sour_with("lactic acid", std::nullopt, 50.0 * milliliter);
    for (const char* name : {"citric acid", "tartaric acid", "malic acid"}) {
        CAPTURE(name);
        CHECK(within(sour_with(name, 52.8 * gram, std::nullopt), syrup, 1e-9));
    }
}

// Common practice: phosphoric acid sets a pH and is hardly tasted.
TEST_CASE("phosphoric acid is not tasted") {
    CHECK(sour_with("phosphoric acid", 50.0 * gram, std::nullopt) == 0.0);
}

TEST_CASE("sourness goes on evenly where acid reaches its threshold") {
    double before = 0.0;
    for (double grams = 0.05; grams <= 3.0; grams += 0.05) {
        const double level = sourness_of_acid(grams * gram_per_liter);
        CHECK(level > before);
        CHECK(level < before + 0.19);
        before = level;
    }
}
