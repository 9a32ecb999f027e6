#include "report/style_card.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/has.hpp"
#include "tests/report/sample_check.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

std::string card_of(const Style& style, const TextStyle& look) {
    return style_card(style, surroundings_of(style, styles_of(style.guide)), usual_handbook(), look);
}

}  // namespace

TEST_CASE("every style of both guides fits on one page") {
    for (const std::string& guide : usual_library().guides()) {
        const std::vector<Style> styles = styles_of(guide);
        for (const Style& style : styles) {
            CAPTURE(style.code);
            const std::string card =
                style_card(style, surroundings_of(style, styles), usual_handbook(), {80, false, false});
            CHECK(static_cast<std::size_t>(std::count(card.begin(), card.end(), '\n')) <= card_lines);
            CHECK(widest_line(card) <= 80);
        }
    }
}

TEST_CASE("a card follows the order in which a judge works") {
    const std::string card = card_of(guide_style("21A"), {80, false, true});
    std::size_t at = 0;
    for (const std::string_view part :
         {"21A American IPA", "Look for", "Out of place", "1 Aroma", "2 Appearance", "3 Flavor",
          "4 Mouthfeel", "5 Overall", "If it is rather", "Customary", "Numbers"}) {
        CAPTURE(part);
        const std::size_t next = card.find(part, at);
        REQUIRE(next != std::string::npos);
        at = next;
    }
}

TEST_CASE("a card tells what must, may and must not be there, and what the form must say") {
    // Beer Judge Certification Program, Beer Style Guidelines, 2021: a saison declares strength and color, is
    // very dry and very lively, and shows no Brettanomyces.
    const std::string card = card_of(guide_style("25B"), {80, false, true});
    CHECK(has(card, "the strength (table, standard or super)"));
    CHECK(has(card, "the color (pale or dark)"));
    CHECK(has(card, "finish very dry"));
    CHECK(has(card, "carbonation very high"));
    CHECK(has(card, "Never with     brettanomyces"));
    CHECK(has(card, "25B-table-pale"));
}

TEST_CASE("what few beers show comes first among what marks a style") {
    // Common practice: smoke makes the Rauchbier, roast the stout, sourness the Berliner Weisse.
    const auto first_mark = [](const std::string& code) {
        const std::string card = card_of(guide_style(code), {80, false, true});
        const std::size_t at = card.find("Look for") + std::string_view("Look for       ").size();
        return card.substr(at, card.find(' ', at) - at);
    };
    CHECK(first_mark("6B") == "smoke");
    CHECK(first_mark("15B") == "roast");
    CHECK(first_mark("23A") == "sour");
    CHECK(first_mark("21A") == "hop");
}

TEST_CASE("what may be tasted is not out of place for being ruled out of the nose") {
    Style style;
    style.expected[Attribute::aroma_hop] = Expectation{0.0, 0.0, false};
    style.expected[Attribute::flavor_hop] = Expectation{0.0, 2.0, false};
    style.expected[Attribute::flavor_smoke] = Expectation{0.0, 0.0, false};
    CHECK(has(card_of(style, {80, false, true}), "Out of place   smoke\n"));
}

TEST_CASE("a card is plain ASCII where asked, and painted only where asked") {
    const std::string plain = card_of(guide_style("5B"), {80, false, true});
    CHECK(std::all_of(plain.begin(), plain.end(),
                      [](char byte) { return static_cast<unsigned char>(byte) < 0x80U; }));
    CHECK_FALSE(has(plain, "\033"));
    CHECK(has(card_of(guide_style("5B"), {80, true, false}), "\033"));
}

TEST_CASE("a narrow page holds a card as well") {
    CHECK(widest_line(card_of(guide_style("21A"), {60, false, false})) <= 60);
}
