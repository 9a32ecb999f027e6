#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "advice/check.hpp"
#include "reading/library.hpp"
#include "reading/recipe_file.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;

namespace {

/// A demo beer held against the style it declares.
Check checked(const std::string& name) {
    const Library library(embedded_documents());
    const auto recipe =
        read_recipe(std::string(ENTRYWISE_SOURCE_DIR) + "/recipes/" + name + ".yaml", library.ingredients());
    REQUIRE(recipe);
    REQUIRE(recipe->style);
    const auto style = library.style(*recipe->style);
    REQUIRE(style);
    return check(*recipe, *style, testing::usual_handbook());
}

/// The section of nose, eye, tongue and mouth that loses most points.
Section dearest_section(const Sheet& sheet) {
    Section dearest = Section::aroma;
    for (const Section section : {Section::appearance, Section::flavor, Section::mouthfeel}) {
        if (sheet.at_risk[section].median > sheet.at_risk[dearest].median) {
            dearest = section;
        }
    }
    return dearest;
}

struct OffStyle {
    std::string name;
    Section section;
    std::string finding;
    double least_at_risk;
};

}  // namespace

// Sea Smoke's color is of another style altogether, yet color alone never costs more than two points or so of
// appearance (Wolfe, Beer Evaluation and the Judging Process: appearance is one point each for color, clarity
// and head).
TEST_CASE("demo beers brewed off style lose in the section they miss") {
    const std::vector<OffStyle> beers{
        {"slack-tide", Section::flavor, "flavor.caramel.above", 4.5},
        {"first-ferry", Section::aroma, "aroma.hop.below", 10.0},
        {"sea-smoke", Section::appearance, "appearance.color.above", 2.0},
        {"low-water", Section::mouthfeel, "mouthfeel.carbonation.below", 6.0},
        {"harbor-master", Section::flavor, "flavor.alcohol.above", 4.5},
    };
    for (const OffStyle& beer : beers) {
        CAPTURE(beer.name);
        const Check result = checked(beer.name);
        CHECK(result.sheet.total.median > beer.least_at_risk);
        CHECK(dearest_section(result.sheet) == beer.section);
        REQUIRE_FALSE(result.findings.empty());
        CHECK(id_of(result.findings.front().finding) == beer.finding);
        CHECK_FALSE(result.findings.front().corrections.empty());
    }
}

TEST_CASE("demo beers brewed to style stay under four points at risk") {
    for (const std::string name : {"bell-buoy", "coal-barge", "day-sail", "milk-run", "night-watch",
                                   "salt-hay", "storm-glass", "third-light", "tide-pool"}) {
        CAPTURE(name);
        CHECK(checked(name).sheet.total.median < 4.0);
    }
}
