#include "style/attribute.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace entrywise;

TEST_CASE("every attribute is found by its section and word") {
    std::set<std::string> names;
    for (const Attribute attribute : all_attributes()) {
        const auto found = attribute_named(section_of(attribute), word_of(attribute));
        REQUIRE(found.has_value());
        CHECK(*found == attribute);
        names.insert(std::string(word_of(section_of(attribute))) + "." + std::string(word_of(attribute)));
    }
    CHECK(names.size() == attribute_count);
    CHECK(names.count("flavor.bitterness") == 1);
    CHECK(names.count("appearance.head_retention") == 1);
}

// Beer Judge Certification Program, Beer Scoresheet: aroma, appearance, flavor, mouthfeel, overall
// impression.
TEST_CASE("the sections are those of the score sheet") {
    for (const std::string_view word : {"aroma", "appearance", "flavor", "mouthfeel", "overall"}) {
        const auto section = section_named(word);
        REQUIRE(section.has_value());
        CHECK(word_of(*section) == word);
    }
    CHECK_FALSE(section_named("taste").has_value());
    CHECK_FALSE(section_named("").has_value());
}

TEST_CASE("a word belongs to its section only") {
    CHECK(attribute_named(Section::mouthfeel, "body") == Attribute::mouthfeel_body);
    CHECK_FALSE(attribute_named(Section::aroma, "body").has_value());
    CHECK(attribute_named(Section::aroma, "hop") == Attribute::aroma_hop);
    CHECK(attribute_named(Section::flavor, "hop") == Attribute::flavor_hop);
}

// The words of style guides, lowest first (common practice).
TEST_CASE("the words of a scale stand for whole levels from zero") {
    for (const SensoryScale scale : {SensoryScale::intensity, SensoryScale::body, SensoryScale::clarity,
                                     SensoryScale::finish, SensoryScale::balance}) {
        double level = 0.0;
        for (const std::string_view word : words_of(scale)) {
            CHECK(level_named(scale, word) == level);
            CHECK(word_for(scale, level) == word);
            level += 1.0;
        }
    }
    CHECK(level_named(SensoryScale::intensity, "none") == 0.0);
    CHECK(level_named(SensoryScale::intensity, "medium-low") == 3.0);
    CHECK(level_named(SensoryScale::intensity, "very high") == 7.0);
    CHECK(level_named(SensoryScale::body, "medium-full") == 5.0);
    CHECK(level_named(SensoryScale::clarity, "brilliant") == 5.0);
    CHECK(level_named(SensoryScale::balance, "even") == 3.0);
}

// Style guides write light for low, moderate for medium and strong for high (common practice).
TEST_CASE("words that mean the same intensity are known") {
    CHECK(level_named(SensoryScale::intensity, "light") == level_named(SensoryScale::intensity, "low"));
    CHECK(level_named(SensoryScale::intensity, "moderate") == level_named(SensoryScale::intensity, "medium"));
    CHECK(level_named(SensoryScale::intensity, "strong") == level_named(SensoryScale::intensity, "high"));
    CHECK(level_named(SensoryScale::body, "light") == 2.0);
    CHECK_FALSE(level_named(SensoryScale::intensity, "loud").has_value());
    CHECK_FALSE(level_named(SensoryScale::clarity, "moderate").has_value());
}

TEST_CASE("a level takes the nearest word, and beyond the ends that of the end") {
    CHECK(word_for(SensoryScale::intensity, 3.4) == "medium-low");
    CHECK(word_for(SensoryScale::intensity, 3.6) == "medium");
    CHECK(word_for(SensoryScale::intensity, -2.0) == "none");
    CHECK(word_for(SensoryScale::intensity, 12.0) == "very high");
    CHECK(word_for(SensoryScale::finish, 12.0) == "very sweet");
}

TEST_CASE("values by attribute and by section are kept apart") {
    ByAttribute<int> by_attribute;
    int number = 0;
    for (const Attribute attribute : all_attributes()) {
        by_attribute[attribute] = number++;
    }
    number = 0;
    for (const Attribute attribute : all_attributes()) {
        CHECK(by_attribute[attribute] == number++);
    }
    BySection<int> by_section;
    by_section[Section::flavor] = 20;
    CHECK(by_section[Section::flavor] == 20);
    CHECK(by_section[Section::aroma] == 0);
}
