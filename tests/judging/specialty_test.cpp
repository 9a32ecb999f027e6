#include "judging/specialty.hpp"

#include <doctest/doctest.h>

#include <string>

#include "base/text.hpp"
#include "tests/support/guide.hpp"

// Levels and ranges: Beer Judge Certification Program, Beer Style Guidelines, 2021.

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Style judged(const std::string& specialty, const std::string& base) {
    return judged_style(guide_style(specialty), guide_style(base));
}

}  // namespace

TEST_CASE("a fruit beer on a blonde ale has the numbers of the blonde ale and its own astringency") {
    const Style style = judged("29A", "18A");
    CHECK(style.code == "29A");
    CHECK(style.name == "Fruit Beer");
    CHECK(*style.ranges.original_gravity->low == 1.038 * specific_gravity);
    CHECK(*style.ranges.original_gravity->high == 1.054 * specific_gravity);
    CHECK(*style.ranges.alcohol->high == 5.5 * percent_by_volume);
    CHECK(*style.ranges.bitterness->low == 15.0 * ibu);
    CHECK(*style.ranges.bitterness->high == 28.0 * ibu);
    CHECK(*style.ranges.color->high == 6.0 * srm);
    // Fruit may bring tannin up to medium-low, where the blonde ale takes hardly any for granted.
    const auto& astringency = style.expected[Attribute::mouthfeel_astringency];
    REQUIRE(astringency);
    CHECK(word_for(SensoryScale::intensity, astringency->high) == "medium-low");
    CHECK_FALSE(astringency->assumed);
    CHECK(word_for(SensoryScale::intensity, style.expected[Attribute::flavor_bitterness]->low) ==
          "medium-low");
    CHECK(contains(style.grist_expected, "fruit"));
    CHECK(contains(style.grist_inappropriate, "artificial-fruit"));
    CHECK(contains(style.must_declare, "fruit"));
}

TEST_CASE("a spice beer must show its spice, whatever its base says") {
    const Style style = judged("30A", "18A");
    CHECK(word_for(SensoryScale::intensity, style.expected[Attribute::flavor_spice]->low) == "very low");
    CHECK(word_for(SensoryScale::intensity, style.expected[Attribute::flavor_spice]->high) == "very high");
    CHECK(*style.ranges.bitterness->high == 28.0 * ibu);
}

TEST_CASE("a smoked best bitter must smell of smoke, though a best bitter is taken to have none") {
    CHECK(guide_style("11B").expected[Attribute::aroma_smoke]->high == 0.0);
    const Style style = judged("32A", "11B");
    for (const Attribute attribute : {Attribute::aroma_smoke, Attribute::flavor_smoke}) {
        CHECK(word_for(SensoryScale::intensity, style.expected[attribute]->low) == "low");
        CHECK(word_for(SensoryScale::intensity, style.expected[attribute]->high) == "high");
    }
    CHECK(*style.ranges.original_gravity->low == 1.040 * specific_gravity);
    CHECK(*style.ranges.bitterness->high == 40.0 * ibu);
    CHECK(word_for(SensoryScale::finish, style.expected[Attribute::flavor_finish]->high) == "dry");
    CHECK(contains(style.hop_notes, "earthy"));
}

TEST_CASE("custom is the base's") {
    const Style base = guide_style("11B");
    CHECK(judged("32A", "11B").custom.yeast_typical == base.custom.yeast_typical);
    CHECK(judged("32A", "11B").custom.carbonation->low == base.custom.carbonation->low);
}
