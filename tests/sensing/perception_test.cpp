#include "style/perception.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <map>
#include <string>

#include "tests/support/agreement.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

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
    CHECK(agreements.at(Attribute::mouthfeel_body).levels() >= 0.91);
    CHECK(agreements.at(Attribute::flavor_finish).levels() >= 0.97);
    CHECK(agreements.at(Attribute::flavor_alcohol).levels() >= 0.97);
    CHECK(agreements.at(Attribute::mouthfeel_warmth).levels() >= 0.97);
    CHECK(agreements.at(Attribute::flavor_roast).levels() >= 0.95);
    CHECK(agreements.at(Attribute::flavor_malt).levels() >= 0.88);
    CHECK(agreements.at(Attribute::flavor_balance).levels() >= 0.97);
}

// A yardstick for the test above: what the two guides say of the same or the nearest style in words.
TEST_CASE("the maps agree with the guide that no fit has read at least as often as the other guide does") {
    const auto guides = agreement_of_guides();
    print("guide beside guide", guides);
    const auto maps = agreement_with("ba-2025");
    for (const Attribute attribute :
         {Attribute::flavor_bitterness, Attribute::mouthfeel_body, Attribute::flavor_finish,
          Attribute::flavor_alcohol, Attribute::mouthfeel_warmth, Attribute::flavor_balance}) {
        CAPTURE(std::string(word_of(attribute)));
        CHECK(maps.at(attribute).levels() >= guides.at(attribute).levels());
        CHECK(maps.at(attribute).words() >= guides.at(attribute).words());
    }
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
