#include <doctest/doctest.h>

#include "report/estimate_json.hpp"
#include "report/estimate_text.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_check.hpp"

using namespace entrywise;
using entrywise::testing::has;

TEST_CASE("no line of an estimate is longer than the page is wide") {
    for (const std::size_t width : {60U, 80U, 120U, 160U}) {
        for (const bool ascii : {false, true}) {
            CHECK(widest_line(estimate_text(sample_check().recipe, sample_beer(), {width, true, ascii})) <=
                  width);
        }
    }
}

TEST_CASE("an estimate tells its numbers, where they come from and by which formula") {
    const std::string text = estimate_text(sample_check().recipe, sample_beer(), {80, false, false});
    CHECK_FALSE(has(text, "\033"));
    CHECK(has(text, "1.058–1.066"));
    CHECK(has(text, "pale ale malt"));
    CHECK(has(text, "88 %"));
    CHECK(has(text, "Tinseth 71, Rager 83, Garetz 66 IBU"));
    CHECK(has(text, "Balling"));
    // 9.1 SRM are 18 EBC: EBC = 25/12.7 SRM (ASBC Methods of Analysis, Beer-10; Analytica EBC, 9.6).
    CHECK(has(text, " 18 "));
}

TEST_CASE("the document of an estimate has the numbers of its form and what they come from") {
    const Json estimate = Json::parse(json_text(estimate_json(sample_check().recipe, sample_beer())));
    CHECK(estimate["format"] == "entrywise/estimate/1");
    CHECK(estimate["recipe"]["name"] == "Slack\033[31m Tide");
    CHECK(estimate["beer"]["alcohol"]["median"] == 6.7);
    CHECK(estimate["sources"]["original_gravity"][0]["ingredient"] == "pale ale malt");
    CHECK(estimate["sources"]["original_gravity"][0]["line"] == 10);
    CHECK(estimate["other_bitterness"]["tinseth"] == 71.0);
    CHECK(estimate["assumed"].size() == 2);
}
