#include <doctest/doctest.h>

#include "report/style_comparison_text.hpp"
#include "report/style_json.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_check.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

std::string text_of_both(const Style& first, const Style& second, const TextStyle& style) {
    return style_comparison_text(compared(first, second), usual_phrases(), style);
}

}  // namespace

TEST_CASE("two styles stand side by side within the page") {
    const Style other_guide = *usual_library().style({"ba-2025", "03-08"});
    for (const std::size_t width : {60U, 80U, 160U}) {
        for (const Style& second :
             {guide_style("18B"), guide_style("29A"), guide_style("25B-table-pale"), other_guide}) {
            CAPTURE(second.code);
            CHECK(widest_line(text_of_both(guide_style("21A"), second, {width, false, false})) <= width);
        }
    }
}

TEST_CASE("numbers stand apart on a narrow page as well") {
    const std::string text = text_of_both(guide_style("21A"), guide_style("18B"), {60, false, true});
    CHECK(has(text, "1.056-1.070 "));
    CHECK(has(text, " 1.045-1.060 "));
}

TEST_CASE("ranges, what of them both accept, and customs are told") {
    // Beer Judge Certification Program, Beer Style Guidelines, 2021: 40 to 70 IBU and 30 to 50 IBU.
    const std::string text = text_of_both(guide_style("21A"), guide_style("18B"), {80, false, true});
    CHECK(has(text, "40-70 IBU"));
    CHECK(has(text, "40-50"));
    CHECK(has(text, "A beer can be in both"));
    const std::string far = text_of_both(guide_style("5D"), guide_style("20C"), {80, false, true});
    CHECK(has(far, "none"));
    CHECK(has(far, "Fermentation: 5D bottom, 20C top"));
    CHECK(has(far, "No beer is wholly in both: color"));
}

TEST_CASE("styles of one code in two guides are told by guide") {
    Style other = guide_style("21A");
    other.guide = "club";
    CHECK(has(text_of_both(guide_style("21A"), other, {80, false, true}), "club/21A"));
    CHECK(has(text_of_both(guide_style("21A"), other, {80, false, true}), "nothing separates them for sure"));
}

TEST_CASE("a comparison as JSON names both styles and their traits") {
    const Json document = style_comparison_json(compared(guide_style("5D"), guide_style("20C")));
    CHECK(document["format"] == "entrywise/styles-compare/1");
    CHECK(document["styles"][0]["code"] == "5D");
    CHECK(document["separating"][0]["quantity"] == "color");
    CHECK(document["separating"][0]["accepted"][0] == Json::array({2.0, 4.0}));
    CHECK(document["separating"][0]["second_is"] == "above");
    CHECK(document["can_be_both"] == false);
    CHECK(document["custom"]["yeast"]["first_alone"][0] == "german lager");
}

TEST_CASE("a style as JSON holds levels, words and declarations") {
    const Json document = style_json(guide_style("25B"), {}, usual_phrases());
    CHECK(document["format"] == "entrywise/styles-show/1");
    CHECK(document["expected"]["flavor"]["finish"]["words"][0] == "very dry");
    CHECK(document["numbers"][0]["quantity"] == "bitterness");
    CHECK(document["declares"]["must"][0]["choices"][0] == "table");
    CHECK(document["varies"] == true);
    CHECK(style_list_json({guide_style("1A")})["styles"][0]["code"] == "1A");
}
