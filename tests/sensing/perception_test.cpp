#include "style/perception.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cmath>
#include <map>
#include <string>

#include "sensing/hops.hpp"
#include "sensing/middle_of_style.hpp"
#include "tests/support/palate.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// How the levels at the middle of styles agree with the words of their guide.
struct Agreement {
    int count = 0;
    int level_within_one = 0;
    int word_within_one = 0;

    double levels() const { return static_cast<double>(level_within_one) / count; }
    double words() const { return static_cast<double>(word_within_one) / count; }
};

/// What is customary for a style, read as the hops that reach its glass, in grams of dry hop per liter: a
/// late addition in step with bitterness, and a dry hop where it is typical or possible (working values; no
/// number of a guide tells of late hops).
Concentration customary_hops(const Style& style, const MiddleOfStyle& middle) {
    const double late = in(middle.bitterness, ibu) / 60.0;
    const double dry = style.custom.dry_hop == "typical"    ? 3.0
                       : style.custom.dry_hop == "possible" ? 0.6
                                                            : 0.0;
    return (late + dry) * gram_per_liter;
}

std::optional<double> level_of(Attribute attribute, const Style& style, const MiddleOfStyle& middle) {
    switch (attribute) {
        case Attribute::aroma_hop:
            return hop_aroma_level(customary_hops(style, middle));
        case Attribute::flavor_hop:
            return hop_flavor_level(customary_hops(style, middle));
        default:
            return levels_at_middle(middle, usual_palate())[attribute];
    }
}

bool is_within_one(double level, const Expectation& expectation) {
    return level >= expectation.low - 1.0 && level <= expectation.high + 1.0;
}

std::map<Attribute, Agreement> agreement_with(const std::string& guide) {
    const Library library(embedded_documents());
    std::map<Attribute, Agreement> agreements;
    for (const StyleName& name : library.style_names(guide)) {
        const auto style = library.style(name);
        REQUIRE(style);
        const auto middle = middle_of(*style);
        for (const Attribute attribute : all_attributes()) {
            const auto& expectation = style->expected[attribute];
            const auto level = middle && expectation ? level_of(attribute, *style, *middle) : std::nullopt;
            if (level) {
                Agreement& agreement = agreements[attribute];
                ++agreement.count;
                agreement.level_within_one += is_within_one(*level, *expectation) ? 1 : 0;
                agreement.word_within_one += is_within_one(std::round(*level), *expectation) ? 1 : 0;
            }
        }
    }
    return agreements;
}

void print(const std::string& guide, const std::map<Attribute, Agreement>& agreements) {
    fmt::print("{:<26} {:>5} {:>17} {:>16}\n", guide, "of", "level within one", "word within one");
    for (const auto& [attribute, agreement] : agreements) {
        fmt::print("{:<26} {:>5} {:>17.2f} {:>16.2f}\n",
                   fmt::format("{} {}", word_of(section_of(attribute)), word_of(attribute)), agreement.count,
                   agreement.levels(), agreement.words());
    }
}

}  // namespace

// Brewers Association, Beer Style Guidelines, 2025, as coded in styles/ba-2025: numbers and words side by
// side. No constant of a map is fitted to them (tools/fit-perception reads styles/bjcp-2021 alone).
TEST_CASE("the maps predict the words of a guide that no fit has read") {
    const auto agreements = agreement_with("ba-2025");
    print("ba-2025, held out", agreements);
    CHECK(agreements.at(Attribute::flavor_bitterness).words() >= 0.94);
    CHECK(agreements.at(Attribute::mouthfeel_body).words() >= 0.95);
    CHECK(agreements.at(Attribute::flavor_finish).words() >= 0.97);
    CHECK(agreements.at(Attribute::flavor_alcohol).words() >= 0.97);
    CHECK(agreements.at(Attribute::mouthfeel_warmth).words() >= 0.97);
    CHECK(agreements.at(Attribute::flavor_roast).words() >= 0.95);
    CHECK(agreements.at(Attribute::flavor_malt).words() >= 0.94);
    CHECK(agreements.at(Attribute::flavor_balance).words() >= 0.97);
    // The same before the level is rounded to a word: harder, since almost a step beside is too far.
    CHECK(agreements.at(Attribute::flavor_bitterness).levels() >= 0.90);
    CHECK(agreements.at(Attribute::mouthfeel_body).levels() >= 0.88);
    CHECK(agreements.at(Attribute::flavor_finish).levels() >= 0.97);
    CHECK(agreements.at(Attribute::flavor_alcohol).levels() >= 0.97);
    CHECK(agreements.at(Attribute::mouthfeel_warmth).levels() >= 0.97);
    CHECK(agreements.at(Attribute::flavor_roast).levels() >= 0.95);
    CHECK(agreements.at(Attribute::flavor_malt).levels() >= 0.88);
    CHECK(agreements.at(Attribute::flavor_balance).levels() >= 0.97);
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021, as coded in styles/bjcp-2021.
TEST_CASE("the maps keep the words of the guide that they are fitted to") {
    const auto agreements = agreement_with("bjcp-2021");
    print("bjcp-2021, fitted", agreements);
    for (const Attribute attribute :
         {Attribute::flavor_bitterness, Attribute::flavor_finish, Attribute::flavor_alcohol,
          Attribute::mouthfeel_warmth, Attribute::flavor_roast, Attribute::flavor_balance,
          Attribute::mouthfeel_body, Attribute::flavor_caramel}) {
        CAPTURE(std::string(word_of(attribute)));
        CHECK(agreements.at(attribute).levels() >= 0.94);
    }
    CHECK(agreements.at(Attribute::flavor_malt).levels() >= 0.90);
}
