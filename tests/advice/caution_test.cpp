#include "advice/caution.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "base/number.hpp"
#include "tests/support/recipes.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

std::vector<Caution> cautions_for(const Recipe& recipe) {
    return cautions_of(recipe, brew_with(recipe, 64));
}

std::vector<std::string> texts_of(const Recipe& recipe, const std::string& kind) {
    std::vector<std::string> texts;
    for (const Caution& caution : cautions_for(recipe)) {
        if (caution.kind == kind) {
            texts.push_back(caution.text);
        }
    }
    return texts;
}

bool warns_of(const Recipe& recipe, const std::string& kind, const std::string& part) {
    const auto texts = texts_of(recipe, kind);
    return std::any_of(texts.begin(), texts.end(),
                       [&](const std::string& text) { return text.find(part) != std::string::npos; });
}

Recipe with_measured_end(double above_expected) {
    Recipe recipe = pale_ale();
    const SpecificGravity expected = brew_at_middle(recipe).final_gravity.median();
    recipe.measured.final_gravity =
        Uncertain<SpecificGravity>{expected + above_expected * specific_gravity, 0.0 * specific_gravity};
    return recipe;
}

/// The number of volumes in the only caution for pressure.
double volumes_told_of(const Recipe& recipe) {
    const auto texts = texts_of(recipe, "pressure");
    REQUIRE(texts.size() == 1);
    const std::size_t before = texts.front().find("up to ");
    REQUIRE(before != std::string::npos);
    const auto told = leading_number(std::string_view(texts.front()).substr(before + 6));
    REQUIRE(told);
    return told->number;
}

}  // namespace

TEST_CASE("a plain pale ale is cautioned for gluten and nothing else") {
    const auto cautions = cautions_for(pale_ale());
    REQUIRE(cautions.size() == 1);
    CHECK(cautions[0].kind == "allergen");
    CHECK(cautions[0].text.find("gluten") != std::string::npos);
}

// Common practice: usual beer bottles are made for about 3 volumes, none of them for more than 4.
TEST_CASE("pressure is told above three volumes and forbidden above four") {
    CHECK(texts_of(carbonated_to(2.7), "pressure").empty());
    CHECK(warns_of(carbonated_to(3.4), "pressure", "thick bottles"));
    CHECK(warns_of(carbonated_to(4.3), "pressure", "more than any common beer bottle"));
    Recipe keg = carbonated_to(4.3);
    keg.conditioning.bottled = false;
    CHECK(texts_of(keg, "pressure").empty());
}

// Andrews and Gilliland, Super-attenuation of beer, Journal of the Institute of Brewing 58, 1952.
TEST_CASE("yeast that ferments on is told, but for a keg") {
    Recipe saison = pale_ale();
    saison.yeasts.front().yeast = saison_diastatic();
    CHECK(warns_of(saison, "pressure", "iastatic"));
    Recipe wild = pale_ale();
    wild.yeasts.front().yeast.brettanomyces = true;
    CHECK(warns_of(wild, "pressure", "Brettanomyces"));
    saison.conditioning.bottled = false;
    CHECK(texts_of(saison, "pressure").empty());
}

TEST_CASE("a final gravity that stands high is told, one as expected is not") {
    CHECK(warns_of(with_measured_end(0.0041), "pressure", "0.004"));
    CHECK(texts_of(with_measured_end(0.001), "pressure").empty());
    CHECK(texts_of(with_measured_end(-0.004), "pressure").empty());
}

// Stokholm and Shellhammer, Hop creep, technical brief of the Brewers Association, 2020, from memory: 1 to
// 2 °P go on to ferment, which is two to four volumes by the equation of fermentation.
TEST_CASE("much dry hop is told where the final gravity was not measured") {
    Recipe hazy = pale_ale();
    hazy.hops.push_back(dry_hopped(cascade(), 300.0, 2.0));
    CHECK(warns_of(hazy, "pressure", "Dry hops"));
    const double volumes = volumes_told_of(hazy);
    CHECK(volumes > 1.9);
    CHECK(volumes < 3.9);
    Recipe filtered = hazy;
    filtered.conditioning.filtered = true;
    CHECK_FALSE(warns_of(filtered, "pressure", "Dry hops"));
    Recipe keg = hazy;
    keg.conditioning.bottled = false;
    CHECK_FALSE(warns_of(keg, "pressure", "Dry hops"));
    CHECK(texts_of(with_measured_end(0.0), "pressure").empty());
    Recipe little = pale_ale();
    little.hops.push_back(dry_hopped(cascade(), 40.0, 4.0));
    CHECK_FALSE(warns_of(little, "pressure", "Dry hops"));
}

// Gluten grains, milk, fish and nuts are among the allergens of Regulation (EU) 1169/2011, annex II.
TEST_CASE("allergens are named, each once") {
    Recipe milk = pale_ale();
    milk.grist.push_back(grist(lactose(), 0.3, GristUse::boil));
    CHECK(warns_of(milk, "allergen", "milk"));
    CHECK(warns_of(milk, "allergen", "gluten"));
    CHECK(warns_of(with_extra(extra("isinglass", ExtraKind::fining, 20.0)), "allergen", "fish"));
    CHECK(warns_of(with_extra(extra("hazelnuts", ExtraKind::nut, 20.0)), "allergen", "hazelnuts"));
    CHECK_FALSE(warns_of(pale_ale(), "allergen", "milk"));
    CHECK_FALSE(warns_of(with_extra(extra("gelatin", ExtraKind::fining, 20.0)), "allergen", "fish"));
    CHECK(texts_of(milk, "allergen").size() == 1);
}

TEST_CASE("strong beer is told that its alcohol is predicted") {
    CHECK(texts_of(pale_ale(), "alcohol").empty());
    Recipe strong = pale_ale();
    strong.grist[0].mass = 10.0 * kilogram;
    CHECK(texts_of(strong, "alcohol").size() == 1);
}

TEST_CASE("unusual botanicals are told, kitchen spice is not") {
    CHECK(warns_of(with_extra(extra("labrador tea", ExtraKind::tea, 20.0)), "botanical", "labrador tea"));
    CHECK(texts_of(with_extra(extra("coriander", ExtraKind::spice, 20.0)), "botanical").empty());
}
