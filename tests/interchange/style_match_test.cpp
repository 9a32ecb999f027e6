#include "interchange/style_match.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/interchange/support.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// The code of the style that these words are taken for; empty where they are left open.
std::string matched(const std::string& words, const std::string& guide = {}) {
    const auto match = style_match(words, guide, known_titles());
    return match ? match->name.guide + "/" + match->name.code : std::string();
}

/// The sample with its style told in other words.
std::string with_style(const std::string& name, const std::string& number, const std::string& letter,
                       const std::string& guide) {
    const std::string xml = sample("sample.xml");
    const std::size_t begin = xml.find("<STYLE>");
    const std::size_t end = xml.find("</STYLE>");
    return std::string(xml).replace(begin, end - begin,
                                    "<STYLE><NAME>" + name + "</NAME><CATEGORY_NUMBER>" + number +
                                        "</CATEGORY_NUMBER><STYLE_LETTER>" + letter +
                                        "</STYLE_LETTER><STYLE_GUIDE>" + guide + "</STYLE_GUIDE>");
}

ExchangedRecipe read_with_titles(const std::string& xml) {
    const auto recipe = read_exchange(Exchange::beerxml, xml, "file", {}, known_ingredients(), known_titles);
    REQUIRE(recipe);
    return *recipe;
}

}  // namespace

// Names of styles in the guides of 2008 and 2015 (from memory) beside what the guide of 2021 calls the same
// beer.
TEST_CASE("a style is known by its name, also by one of an earlier edition") {
    CHECK(matched("American IPA") == "bjcp-2021/21A");
    CHECK(matched("american ipa", "BJCP 2008") == "bjcp-2021/21A");
    CHECK(matched("Standard/Ordinary Bitter") == "bjcp-2021/11A");
    CHECK(matched("German Pilsner (Pils)", "BJCP 2008") == "bjcp-2021/5D");
    CHECK(matched("Russian Imperial Stout", "BJCP 2008") == "bjcp-2021/20C");
    CHECK(matched("Specialty IPA: Black IPA", "BJCP 2015") == "bjcp-2021/21B-black");
    CHECK(matched("Kolsch") == "bjcp-2021/5B");
    CHECK(matched("Blonde Ale") == "bjcp-2021/18A");
    CHECK(matched("Schwarzbier (Black Beer)") == "bjcp-2021/8B");
}

TEST_CASE("the guide that is named is looked through where it is known") {
    CHECK(matched("American-Style India Pale Ale", "ba-2025") == "ba-2025/03-08");
    CHECK(matched("American-Style India Pale Ale", "BA 2025") == "ba-2025/03-08");
    CHECK(matched("American-Style India Pale Ale") == "ba-2025/03-08");
    CHECK(matched("Weissbier", "ba-2025") != "bjcp-2021/10A");
}

TEST_CASE("what is like no name or like several is left open") {
    CHECK(matched("Mild", "BJCP 2008").empty());
    CHECK(matched("My Best Friend").empty());
    CHECK(matched("").empty());
    CHECK(matched("Ale").empty());
    CHECK(matched(std::string(100000, 'x')).empty());
}

TEST_CASE("a record's style is its code where the guide is known, else its name, and that is told") {
    const auto by_code = read_with_titles(with_style("Whatever", "21", "A", "BJCP 2021"));
    CHECK(by_code.recipe.style == StyleName{"bjcp-2021", "21A"});
    const auto by_name = read_with_titles(with_style("American Pale Ale", "10", "A", "BJCP 2008"));
    CHECK(by_name.recipe.style == StyleName{"bjcp-2021", "18B"});
    CHECK(is_remarked(by_name, RemarkKind::matched,
                      "the style 'American Pale Ale' of 'BJCP 2008' -> bjcp-2021/18B American Pale Ale, by "
                      "its name alone"));
    const auto unknown = read_with_titles(with_style("Mild", "11", "A", "BJCP 2008"));
    CHECK_FALSE(unknown.recipe.style);
    CHECK(is_remarked(unknown, RemarkKind::left_out, "no style here has a name like it"));
}
