#include "recipe/ingredients.hpp"

#include <doctest/doctest.h>

using namespace entrywise;

namespace {

IngredientTables tables() {
    IngredientTables result;
    Fermentable malt;
    malt.name = "pale ale malt";
    malt.aliases = {"British Pale Malt", "ale malt"};
    result.fermentables = {malt};
    Hop hop;
    hop.name = "Cascade";
    hop.aliases = {"US Cascade"};
    result.hops = {hop};
    YeastClass yeast;
    yeast.name = "american ale";
    result.yeasts = {yeast};
    return result;
}

}  // namespace

TEST_CASE("an ingredient is found by its name and by its aliases, case and outer space aside") {
    const IngredientTables known = tables();
    REQUIRE(find_fermentable(known, "pale ale malt") != nullptr);
    CHECK(find_fermentable(known, "Pale Ale Malt") == &known.fermentables[0]);
    CHECK(find_fermentable(known, "british pale malt") == &known.fermentables[0]);
    CHECK(find_fermentable(known, " ale malt ") == &known.fermentables[0]);
    CHECK(find_hop(known, "us cascade") == &known.hops[0]);
    CHECK(find_yeast(known, "AMERICAN ALE") == &known.yeasts[0]);
}

TEST_CASE("what is not in the tables is not found, nor is a part of a name") {
    const IngredientTables known = tables();
    CHECK(find_fermentable(known, "pale") == nullptr);
    CHECK(find_hop(known, "Cascades") == nullptr);
    CHECK(find_yeast(known, "") == nullptr);
    CHECK(find_hop(known, "pale ale malt") == nullptr);
}

// Common practice: starch needs a mash, sugar and malt extract do not.
TEST_CASE("malts and grains need a mash, sugars, extracts and fruit do not") {
    CHECK(needs_a_mash(FermentableKind::base));
    CHECK(needs_a_mash(FermentableKind::toasted));
    CHECK(needs_a_mash(FermentableKind::crystal));
    CHECK(needs_a_mash(FermentableKind::roasted));
    CHECK(needs_a_mash(FermentableKind::adjunct));
    CHECK_FALSE(needs_a_mash(FermentableKind::sugar));
    CHECK_FALSE(needs_a_mash(FermentableKind::malt_extract));
    CHECK_FALSE(needs_a_mash(FermentableKind::fruit));
}
