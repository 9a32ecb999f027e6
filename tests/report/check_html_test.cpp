#include <doctest/doctest.h>
#include <fmt/format.h>
#include <pugixml.hpp>

#include <algorithm>
#include <string>

#include "base/number.hpp"
#include "report/check_json.hpp"
#include "report/check_page.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_html.hpp"

using namespace entrywise;
using entrywise::testing::has;

namespace {

std::string body_of(const Check& check) {
    return check_article(check, sample_score_sheet(), {sample_style()}).body;
}

/// A number of the JSON as a report prints it.
std::string printed(const Json& number, int decimals) {
    return fixed(number.get<double>(), decimals);
}

}  // namespace

TEST_CASE("html: names and notes are text, whatever they hold") {
    Check check = sample_check();
    check.recipe.name = "<b>\"O'Brien\" & {{sons}}</b>";
    check.findings.front().note = "<script>alert(1)</script>";
    check.beer.bitterness.sources.front().ingredient = "<img src=x onerror=y>";
    const std::string body = body_of(check);
    CHECK(has(body, "&lt;b&gt;&quot;O&#39;Brien&quot; &amp; {{sons}}&lt;/b&gt;"));
    CHECK(has(body, "&lt;script&gt;alert(1)&lt;/script&gt;"));
    CHECK(has(body, "&lt;img src=x onerror=y&gt;"));
    CHECK_FALSE(has(body, "<script"));
    CHECK_FALSE(has(body, "<img"));
}

TEST_CASE("html: what turns the writing direction is shown as what it is") {
    Check check = sample_check();
    check.recipe.name = "Tide \u202Eedit";
    CHECK(has(body_of(check), "Tide \\u{202E}edit"));
    CHECK_FALSE(has(body_of(check), "\u202E"));
}

TEST_CASE("html: every picture is well-formed and says what it is") {
    const auto pictures = pictures_of(body_of(sample_check()));
    CHECK(pictures.size() > 10);
    for (const std::string& picture : pictures) {
        pugi::xml_document document;
        CHECK_MESSAGE(document.load_string(picture.c_str()), picture);
        const pugi::xml_node svg = document.child("svg");
        CHECK(std::string(svg.attribute("role").value()) == "img");
        CHECK_FALSE(std::string(svg.child_value("title")).empty());
        CHECK_FALSE(has(picture, "nan"));
        CHECK_FALSE(has(picture, "inf\""));
    }
}

TEST_CASE("html: the page is well-formed as a whole") {
    std::string body = body_of(sample_check());
    for (std::size_t at = body.find("&#160;"); at != std::string::npos; at = body.find("&#160;")) {
        body.replace(at, 6, " ");
    }
    for (std::size_t at = body.find("<br>"); at != std::string::npos; at = body.find("<br>")) {
        body.replace(at, 4, "<br/>");
    }
    pugi::xml_document document;
    const pugi::xml_parse_result result = document.load_string(body.c_str());
    CHECK_MESSAGE(result, result.description()
                              << " at " << body.substr(static_cast<std::size_t>(result.offset), 80));
}

TEST_CASE("html: the numbers are those of the JSON") {
    const Check check = sample_check();
    const Json document = check_json(check, sample_score_sheet());
    const std::string text = read_aloud(body_of(check));
    const std::vector<std::pair<std::string, int>> numbers{
        {"original_gravity", 3}, {"final_gravity", 3}, {"alcohol", 1}, {"bitterness", 0}, {"color", 1}};
    for (const auto& each : numbers) {
        const std::string& name = each.first;
        const int decimals = each.second;
        const Json& number = document["beer"][name];
        CHECK_MESSAGE(has(text, printed(number["median"], decimals)), name);
        CHECK_MESSAGE(has(text, printed(number["low"], decimals) + "–" + printed(number["high"], decimals)),
                      name);
    }
    for (const Json& section : document["sheet"]["sections"]) {
        CHECK(has(text, printed(section["at_risk"]["median"], 1)));
        CHECK(
            has(text, printed(section["at_risk"]["low"], 1) + "–" + printed(section["at_risk"]["high"], 1)));
    }
    for (const Json& finding : document["findings"]) {
        CHECK(has(text, printed(finding["points"], 1)));
        CHECK(has(text, finding["note"].get<std::string>()));
        CHECK(has(body_of(check), fmt::format("id=\"{}\"", finding["id"].get<std::string>())));
    }
    CHECK(has(text, "harbor-2030"));
    CHECK(has(text, "34–41 of 50, very good to excellent"));
}

TEST_CASE("html: what lies outside is said in words beside the picture") {
    const std::string text = read_aloud(body_of(sample_check()));
    CHECK(has(text, "above"));
    CHECK(has(text, "Measured, not estimated: original gravity."));
    CHECK(has(text, "take 8 g less Columbus; or mash at 68 °C"));
    CHECK(has(text, "Holds gluten"));
}

TEST_CASE("html: a check without findings says so") {
    Check check = sample_check();
    check.findings.clear();
    check.sheet.findings.clear();
    CHECK(has(body_of(check), "Nothing to mark down"));
}
