#include <doctest/doctest.h>

#include <string>

#include "report/club_page.hpp"
#include "tests/report/sample_html.hpp"

using namespace entrywise;

namespace {

ClubRow row(const std::string& entry, const std::string& status, double at_risk) {
    ClubRow result;
    result.entry = entry;
    result.name = "Beer <" + entry + ">";
    result.category = "21A";
    result.style = "American IPA";
    result.status = status;
    result.at_risk = at_risk;
    result.at_risk_span = "1.0–3.0";
    result.details = {"A & B"};
    return result;
}

ClubPage evening() {
    return {"Club night",
            {{"move", "would do better elsewhere"}, {"ready", "nothing to say"}},
            {row("1", "ready", 0.4), row("2", "move", 6.1), row("3", "ready", 1.0)}};
}

}  // namespace

TEST_CASE("html: entries stand by status, in the order of the call within one") {
    const std::string page = club_page(evening());
    const auto at = [&](const std::string& entry) { return page.find("data-entry=\"" + entry + "\""); };
    CHECK(at("2") < at("1"));
    CHECK(at("1") < at("3"));
}

TEST_CASE("html: an evening tells how many there are of each status, and opens details without a script") {
    const std::string page = club_page(evening());
    CHECK(has(page, "3 entries"));
    CHECK(has(page, "<dt>move</dt><dd><span class=\"figure\">1</span>"));
    CHECK(has(page, "<dt>ready</dt><dd><span class=\"figure\">2</span>"));
    CHECK(has(page, "<summary><bdi>Beer &lt;2&gt;</bdi></summary><p>A &amp; B</p>"));
}

TEST_CASE("html: an evening without entries is a page") {
    const std::string page = club_page({"Nobody came", {{"ready", "nothing to say"}}, {}});
    CHECK(has(page, "Nobody came"));
    CHECK(has(page, "0 entries"));
}
