#include "judging/surroundings.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "tests/support/guide.hpp"

// Beer Judge Certification Program, Beer Style Guidelines, 2021, and Brewers Association, Beer Style
// Guidelines, 2025: numbers and coded words.

using namespace entrywise;
using namespace entrywise::testing;

namespace {

bool differ_at_all(const std::vector<Contrast>& contrasts) {
    return std::any_of(contrasts.begin(), contrasts.end(),
                       [](const Contrast& contrast) { return contrast.steps > 0.0; });
}

std::vector<std::string> codes_of(const std::vector<Neighbor>& neighbors) {
    std::vector<std::string> codes;
    for (const Neighbor& neighbor : neighbors) {
        codes.push_back(neighbor.code);
    }
    return codes;
}

}  // namespace

TEST_CASE("a neighbor is told apart by what differs, as long as anything does") {
    for (const char* guide : {"bjcp-2021", "ba-2025"}) {
        const std::vector<Style> styles = styles_of(guide);
        for (const Style& style : styles) {
            for (const Neighbor& neighbor : surroundings_of(style, styles).neighbors) {
                CAPTURE(style.code);
                CAPTURE(neighbor.code);
                const auto other = std::find_if(styles.begin(), styles.end(), [&](const Style& each) {
                    return each.code == neighbor.code;
                });
                REQUIRE(other != styles.end());
                const std::vector<Contrast> contrasts = contrasts_between(style, *other);
                CHECK(neighbor.apart.empty() != differ_at_all(contrasts));
                CHECK(std::is_sorted(
                    neighbor.apart.begin(), neighbor.apart.end(),
                    [](const Contrast& one, const Contrast& two) { return one.steps > two.steps; }));
                CHECK(std::all_of(neighbor.apart.begin(), neighbor.apart.end(),
                                  [](const Contrast& contrast) { return contrast.steps > 0.0; }));
            }
        }
    }
}

TEST_CASE("the neighbors are those that a style's file names") {
    const std::vector<Style> styles = styles_of("bjcp-2021");
    const Style style = guide_style("1A");
    std::vector<std::string> named;
    for (const auto& [code, said] : style.custom.neighbors) {
        named.push_back(code);
    }
    REQUIRE(!named.empty());
    CHECK(codes_of(surroundings_of(style, styles).neighbors) == named);
}

TEST_CASE("where a file names none, the neighbors are up to four others, and never the style itself") {
    const std::vector<Style> styles = styles_of("ba-2025");
    std::size_t with_neighbors = 0;
    for (const Style& style : styles) {
        CAPTURE(style.code);
        const std::vector<std::string> codes = codes_of(surroundings_of(style, styles).neighbors);
        CHECK(codes.size() <= 4);
        CHECK(std::find(codes.begin(), codes.end(), style.code) == codes.end());
        with_neighbors += codes.empty() ? 0U : 1U;
    }
    CHECK(with_neighbors > styles.size() / 2);
}

TEST_CASE("variants are the styles whose codes continue a style's own, and are no neighbors of it") {
    const std::vector<Style> styles = styles_of("bjcp-2021");
    const Surroundings around = surroundings_of(guide_style("25B"), styles);
    REQUIRE(!around.variants.empty());
    for (const Style& variant : around.variants) {
        CHECK(variant.code.starts_with("25B-"));
    }
}

TEST_CASE(
    "a style that lays down little, and none names, has no neighbors; nor is one that varies a neighbor") {
    const std::vector<Style> styles = styles_of("ba-2025");
    Style vague;
    vague.code = "99-99";
    vague.ranges.color = Range<Color>{5.0 * srm, 9.0 * srm};
    CHECK(surroundings_of(vague, styles).neighbors.empty());
    for (const Style& style : styles) {
        for (const std::string& code : codes_of(surroundings_of(style, styles).neighbors)) {
            const auto other = std::find_if(styles.begin(), styles.end(),
                                            [&](const Style& each) { return each.code == code; });
            REQUIRE(other != styles.end());
            CHECK_FALSE(other->varies);
        }
    }
}

TEST_CASE("neighbors of a pilsner are pale lagers, not stouts") {
    // Common practice: what is entered instead of a German Pils is another pale, hoppy or malty lager.
    const std::vector<Style> guide = styles_of("bjcp-2021");
    Style pils = guide_style("5D");
    pils.custom.neighbors.clear();
    const Surroundings surroundings = surroundings_of(pils, guide);
    REQUIRE(surroundings.neighbors.size() == 4);
    for (const Neighbor& neighbor : surroundings.neighbors) {
        const Style style = guide_style(neighbor.code);
        REQUIRE(style.ranges.color.has_value());
        CHECK(*style.ranges.color->high <= 8.0 * srm);
        CHECK_FALSE(neighbor.apart.empty());
    }
}

TEST_CASE("the variants of a saison are those of its strengths and colors") {
    const std::vector<Style> guide = styles_of("bjcp-2021");
    CHECK(surroundings_of(guide_style("25B"), guide).variants.size() == 6);
    CHECK(surroundings_of(guide_style("21A"), guide).variants.empty());
}

TEST_CASE("neighbors that a style names itself go by their own names") {
    const std::vector<Style> guide = styles_of("bjcp-2021");
    const Style porter = guide_style("13C");
    const Surroundings surroundings = surroundings_of(porter, guide);
    REQUIRE(surroundings.neighbors.size() == porter.custom.neighbors.size());
    for (const Neighbor& neighbor : surroundings.neighbors) {
        CAPTURE(neighbor.code);
        CHECK(neighbor.name == guide_style(neighbor.code).name);
        CHECK(neighbor.said == porter.custom.neighbors.at(neighbor.code));
    }
}
