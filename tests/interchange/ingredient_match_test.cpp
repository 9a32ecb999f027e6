#include "interchange/ingredient_match.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

#include "tests/interchange/support.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

std::string fermentable(const std::string& name, DraftKind kind = DraftKind::grain,
                        const std::string& color = {}, DraftGroup group = DraftGroup::unknown) {
    DraftFermentable draft;
    draft.name = Written{name, {}};
    draft.kind = kind;
    draft.group = group;
    if (!color.empty()) {
        draft.color = Written{color, {}};
    }
    const auto match = match_fermentable(draft, known_ingredients());
    return match ? match->name : "none";
}

std::string hop(const std::string& name) {
    const auto match = match_hop(name, known_ingredients());
    return match ? match->name : "none";
}

std::string yeast(const std::string& name, const std::string& type = "ale",
                  const std::string& attenuation = {}) {
    DraftYeast draft;
    draft.name = Written{name, {}};
    draft.type = type;
    if (!attenuation.empty()) {
        draft.attenuation = Written{attenuation, {}};
    }
    const auto match = match_yeast(draft, known_ingredients());
    return match ? match->name : "none";
}

}  // namespace

// What brewers mean by these names: common practice.
TEST_CASE("malts and sugars by the names that people write") {
    CHECK(fermentable("Pilsner (2 Row) Ger") == "pilsner malt");
    CHECK(fermentable("Pale Malt, Maris Otter") == "pale ale malt");
    CHECK(fermentable("2-row Brewer's Malt") == "pale malt");
    CHECK(fermentable("Pale 2-Row") == "pale malt");
    CHECK(fermentable("Vienna Malt") == "vienna malt");
    CHECK(fermentable("Wheat Malt, Dark") == "dark wheat malt");
    CHECK(fermentable("Roasted Barley (UK)") == "roasted barley");
    CHECK(fermentable("Flaked Oats, organic") == "flaked oats");
    CHECK(fermentable("Chocolate Malt US") == "chocolate malt");
    CHECK(fermentable("Buckwheat Honey", DraftKind::sugar) == "honey");
    CHECK(fermentable("Corn Sugar (Dextrose)", DraftKind::sugar) == "dextrose");
    CHECK(fermentable("Munnich Malt") == "munich malt light");
}

TEST_CASE("crystal malts, extracts and roasted malts by their color") {
    CHECK(fermentable("Caramel/Crystal Malt - 60L", DraftKind::grain, "60 L") == "crystal medium dark");
    CHECK(fermentable("Crystal Malt", DraftKind::grain, "60 L") == "crystal medium dark");
    CHECK(fermentable("Crystal Malt", DraftKind::grain, "45 L") == "crystal medium");
    CHECK(fermentable("Crystal Rye", DraftKind::grain, "100 L") == "crystal rye");
    CHECK(fermentable("Cara 50", DraftKind::grain, "50 EBC") == "crystal light");
    CHECK(fermentable("Caramalt", DraftKind::grain, "15 L") == "crystal light");
    CHECK(fermentable("Light Dry Extract", DraftKind::dry_extract, "4 L") == "dry malt extract pale");
    CHECK(fermentable("Dark Liquid Extract", DraftKind::liquid_extract, "18 L") ==
          "liquid malt extract dark");
    CHECK(fermentable("House Black", DraftKind::grain, "500 L", DraftGroup::roasted) == "black malt");
    CHECK(fermentable("Base Malt", DraftKind::grain, "1.8 L", DraftGroup::base) == "pilsner malt");
}

TEST_CASE("a word that makes another ingredient is never dropped") {
    CHECK(fermentable("Smoked Pear Wheat") != "wheat malt");
    CHECK(fermentable("Unmalted Spelt") == "unmalted spelt");
    CHECK(fermentable("Toasted Rye Bread") == "none");
}

TEST_CASE("hops by the names that people write") {
    CHECK(hop("Cascade (US)") == "Cascade");
    CHECK(hop("Goldings, East Kent") == "East Kent Goldings");
    CHECK(hop("EKG") == "East Kent Goldings");
    CHECK(hop("US Magnum Pellets") == "Magnum");
    CHECK(hop("Centenial") == "Centennial");
    CHECK(hop("Nobody's Hop") == "none");
}

TEST_CASE("cultures by what their names tell, or by type and attenuation") {
    CHECK(yeast("German Ale") == "kolsch");
    CHECK(yeast("London Ale No. 3") == "english ale");
    CHECK(yeast("Hefeweizen No. 4") == "bavarian wheat");
    CHECK(yeast("Bohemian Lager", "lager") == "czech lager");
    CHECK(yeast("American Lager", "lager") == "american lager");
    CHECK(yeast("Belgian Saison") != "belgian abbey");
    CHECK(yeast("Brett Claussenii", "brett") == "brettanomyces");
    CHECK(yeast("No. 7", "ale", "69 %") == "english ale");
    CHECK(yeast("No. 7", "ale", "77 %") == "american ale");
    CHECK(yeast("No. 7", "lager") == "german lager");
    CHECK(yeast("No. 7", "other") == "none");
}
