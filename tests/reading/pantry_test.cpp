#include "reading/pantry.hpp"

#include <doctest/doctest.h>

#include "reading/library.hpp"

using namespace entrywise;

namespace {

IngredientTables pantry_for(const std::string& code) {
    const Library library(embedded_documents());
    return pantry_of(*library.style({"bjcp-2021", code}), library.ingredients());
}

}  // namespace

// Common practice: American IPA is brewed with American hops and ale yeast from pale malt, German Pils with
// lager yeast and German hops from Pilsner malt.
TEST_CASE("the pantry holds what a style is customarily brewed with, and nothing that is unusual in it") {
    const IngredientTables ipa = pantry_for("21A");
    CHECK(find_hop(ipa, "Cascade") != nullptr);
    CHECK(find_hop(ipa, "Saaz") == nullptr);
    CHECK(find_yeast(ipa, "american ale") != nullptr);
    CHECK(find_fermentable(ipa, "pale malt") != nullptr);
    CHECK(find_fermentable(ipa, "chocolate malt") == nullptr);
    const IngredientTables pils = pantry_for("5D");
    CHECK(find_hop(pils, "Hallertau Mittelfrueh") != nullptr);
    CHECK(find_hop(pils, "Cascade") == nullptr);
    CHECK(find_yeast(pils, "german lager") != nullptr);
    CHECK(find_fermentable(pils, "pilsner malt") != nullptr);
}

TEST_CASE("smoked beer has smoked malt in its pantry, sweet stout has lactose") {
    CHECK(find_fermentable(pantry_for("6B"), "beech-smoked malt") != nullptr);
    CHECK(find_fermentable(pantry_for("16A"), "lactose") != nullptr);
}
