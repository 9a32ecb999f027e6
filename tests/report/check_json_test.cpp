#include "report/check_json.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>

#include "tests/report/sample_check.hpp"

using namespace entrywise;

namespace {

Json document() {
    return Json::parse(json_text(check_json(sample_check(), sample_score_sheet())));
}

std::vector<std::string> keys_of(const Json& object) {
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items()) {
        keys.push_back(key);
    }
    return keys;
}

/// Keys of the published form, which stand first and in this order; others may follow.
void check_starts_with(const Json& object, const std::vector<std::string>& expected) {
    const std::vector<std::string> keys = keys_of(object);
    REQUIRE(keys.size() >= expected.size());
    CHECK(std::vector<std::string>(keys.begin(),
                                   keys.begin() + static_cast<std::ptrdiff_t>(expected.size())) == expected);
}

}  // namespace

TEST_CASE("the document of a check holds every key of its form, in order") {
    const Json check = document();
    check_starts_with(check, {"format", "program", "recipe", "style", "beer", "numbers", "profile", "sheet",
                              "findings", "cautions"});
    CHECK(check["format"] == "entrywise/check/1");
    check_starts_with(check["recipe"], {"name", "file"});
    check_starts_with(check["style"], {"guide", "code", "name"});
    check_starts_with(check["beer"], {"original_gravity", "final_gravity", "alcohol", "bitterness", "color",
                                      "carbonation", "real_extract", "apparent_attenuation"});
    for (const Json& number : check["beer"]) {
        check_starts_with(number, {"median", "low", "high", "unit"});
    }
    check_starts_with(check["numbers"][0], {"quantity", "range", "within"});
    check_starts_with(check["profile"], {"aroma", "appearance", "flavor", "mouthfeel"});
    check_starts_with(check["profile"]["aroma"]["hop"], {"median", "low", "high"});
    check_starts_with(check["sheet"], {"sections", "at_risk"});
    check_starts_with(check["sheet"]["sections"][0], {"section", "points", "at_risk"});
    check_starts_with(check["findings"][0], {"section", "attribute", "direction", "noticed", "points", "note",
                                             "causes", "corrections"});
    check_starts_with(check["cautions"][0], {"kind", "text"});
}

TEST_CASE("numbers stand in their units") {
    const Json beer = document()["beer"];
    CHECK(beer["original_gravity"]["unit"] == "SG");
    CHECK(beer["alcohol"]["unit"] == "% vol");
    CHECK(beer["bitterness"]["unit"] == "IBU");
    CHECK(beer["color"]["unit"] == "SRM");
    CHECK(beer["carbonation"]["unit"] == "vol");
    CHECK(beer["real_extract"]["unit"] == "°P");
    CHECK(beer["apparent_attenuation"]["unit"] == "%");
    CHECK(beer["apparent_attenuation"]["median"] == 81.0);
    CHECK(beer["original_gravity"]["low"] == 1.058);
    CHECK(beer["bitterness"]["high"] == 86.0);
}

TEST_CASE("an open end is null, an end that belongs to the next style is told") {
    const Json numbers = document()["numbers"];
    CHECK(numbers[1]["range"] == Json::array({5.5, 7.5}));
    CHECK(numbers[1]["high_excluded"] == true);
    CHECK(numbers[3]["quantity"] == "color");
    CHECK(numbers[3]["range"] == Json::array({nullptr, 14.0}));
}

TEST_CASE("the sheet frames the whole score") {
    const Json frame = document()["sheet"]["if_otherwise_well_made"];
    check_starts_with(frame, {"low", "high", "bands"});
    CHECK(frame["low"] == 34.0);
    CHECK(frame["high"] == 41.0);
    CHECK(frame["bands"] == Json::array({"very good", "excellent"}));
}

TEST_CASE("a strength stands with its level and its note") {
    Check check = sample_check();
    check.strengths = {{{Attribute::aroma_hop, 4.0, 3.0, 5.0}, "Hop aroma is medium."}};
    const Json strengths = Json::parse(json_text(check_json(check, sample_score_sheet())))["strengths"];
    REQUIRE(strengths.size() == 1);
    CHECK(strengths[0]["section"] == "aroma");
    CHECK(strengths[0]["attribute"] == "hop");
    CHECK(strengths[0]["level"] == 4.0);
    CHECK(strengths[0]["accepted"] == Json::array({3.0, 5.0}));
    CHECK(strengths[0]["note"] == "Hop aroma is medium.");
    CHECK(document()["strengths"] == Json::array());
}

TEST_CASE("the base style that was used is named, and only then") {
    Check check = sample_check();
    CHECK_FALSE(document()["style"].contains("base"));
    CHECK_FALSE(document()["style"].contains("basis"));
    check.base_style = sample_style();
    check.base_style->code = "3B";
    check.basis = "Judged as 3B.";
    const Json style = Json::parse(json_text(check_json(check, sample_score_sheet())))["style"];
    CHECK(style["code"] == "7C");
    CHECK(style["base"]["guide"] == "harbor-2030");
    CHECK(style["base"]["code"] == "3B");
    CHECK(style["basis"] == "Judged as 3B.");
}

TEST_CASE("a missing declaration is on no scale") {
    Check check = sample_check();
    check.findings = {
        {{.section = Section::overall, .attribute = "declaration", .direction = Direction::below},
         "Say it.",
         {},
         {},
         {}}};
    const Json finding = Json::parse(json_text(check_json(check, sample_score_sheet())))["findings"][0];
    CHECK(finding["id"] == "overall.declaration.below");
    CHECK_FALSE(finding.contains("level"));
    CHECK_FALSE(finding.contains("accepted"));
}

TEST_CASE("the finding has its lasting name") {
    CHECK(document()["findings"][0]["id"] == "flavor.bitterness.above");
    CHECK(document()["findings"][0]["noticed"] == 0.64);
    CHECK(document()["findings"][0]["corrections"].size() == 2);
}

TEST_CASE("names come back whole, and nothing in the bytes steers a terminal") {
    const std::string text = json_text(check_json(sample_check(), sample_score_sheet()));
    CHECK(Json::parse(text)["recipe"]["name"] == "Slack\033[31m Tide");
    CHECK(Json::parse(text)["style"]["name"] == "Quay Pale Bière");
    CHECK(std::all_of(text.begin(), text.end(),
                      [](char byte) { return byte == '\n' || (byte >= ' ' && byte <= '~'); }));
    CHECK(text.back() == '\n');
}

TEST_CASE("a name that is not UTF-8 spoils no document") {
    Check check = sample_check();
    check.recipe.file = "caf\xE9.yaml";
    const Json parsed = Json::parse(json_text(check_json(check, sample_score_sheet())));
    CHECK(parsed["recipe"]["file"] == "caf\uFFFD.yaml");
}

TEST_CASE("what is not finite is null") {
    CHECK(json_number(std::numeric_limits<double>::quiet_NaN(), 2).is_null());
    CHECK(json_number(std::numeric_limits<double>::infinity(), 2).is_null());
    CHECK(json_number(0.126, 2) == 0.13);
}

TEST_CASE("the same check gives the same document") {
    CHECK(json_text(check_json(sample_check(), sample_score_sheet())) ==
          json_text(check_json(sample_check(), sample_score_sheet())));
}
