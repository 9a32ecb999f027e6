#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "report/screen_page.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_html.hpp"

using namespace entrywise;
using entrywise::testing::has;

namespace {

template <class Quantity>
Interval80<Quantity> between(double low, double middle, double high, Quantity unit) {
    return {middle * unit, low * unit, high * unit};
}

Screened entry(const std::string& number, const std::string& code, Status status, double at_risk) {
    Screened screened;
    screened.entry.number = number;
    screened.entry.brewer = "Maren & Odd";
    screened.beer = "Beer <" + number + ">";
    screened.style = StyleName{"bjcp-2021", code};
    screened.style_title = "American IPA";
    screened.status = status;
    screened.at_risk = PointsAtRisk{at_risk, at_risk / 2.0, at_risk * 2.0};
    screened.talk = {{"flavor.bitterness.above", 1.5, "It lingers & bites."}};
    screened.allergens = {"gluten"};
    BeerFigures figures{};
    figures.original_gravity = between(1.058, 1.062, 1.067, specific_gravity);
    figures.alcohol = between(6.1, 6.7, 7.4, percent_by_volume);
    figures.bitterness = between(50.0, 60.0, 72.0, ibu);
    screened.figures = figures;
    return screened;
}

Screened moving(Screened screened) {
    BestPlace best;
    best.name = {"bjcp-2021", "18B"};
    best.title = "American Pale Ale";
    best.at_risk = {0.4, 0.1, 1.0};
    best.gain = 5.7;
    screened.status = Status::move;
    screened.best = best;
    return screened;
}

Screened not_read(const std::string& number) {
    Screened screened;
    screened.entry.number = number;
    screened.entry.category = "2IA";
    screened.faults = {{.place = {"entries.csv", {17, 10}},
                        .found = "no style '2IA'",
                        .expected = "the code of a known style",
                        .nearest = "2A",
                        .remedy = {}}};
    return screened;
}

std::string page_of_all(const std::vector<Screened>& entries) {
    std::vector<std::size_t> places;
    for (std::size_t place = 0; place < entries.size(); ++place) {
        places.push_back(place);
    }
    return screen_page(entries, places, flights_of(entries), "evening.csv");
}

std::vector<Screened> evening() {
    return {entry("1", "21A", Status::ready, 0.4), moving(entry("2", "21A", Status::move, 6.1)),
            entry("3", "2A", Status::ready, 1.0), not_read("4")};
}

}  // namespace

TEST_CASE("html: entries stand by what wants attention, in the order of the call within one status") {
    const std::string page = page_of_all(evening());
    const auto at = [&](const std::string& number) { return page.find("data-entry=\"" + number + "\""); };
    CHECK(at("4") < at("2"));
    CHECK(at("2") < at("1"));
    CHECK(at("1") < at("3"));
}

TEST_CASE("html: an evening tells how many there are of each status") {
    const std::string text = read_aloud(page_of_all(evening()));
    CHECK(has(text, "4 entries"));
    CHECK(has(text, "move    1   would stand better elsewhere"));
    CHECK(has(text, "ready    2   little at risk"));
    CHECK(has(text, "incomplete    0"));
}

TEST_CASE("html: a row opens what to talk about, with every number's interval") {
    const std::string page = page_of_all(evening());
    CHECK(has(page, "<summary><bdi>Beer &lt;2&gt;</bdi></summary>"));
    CHECK(has(page, "Brewed by <bdi>Maren &amp; Odd</bdi>"));
    CHECK(has(page, "<p>It lingers &amp; bites. (1.5 points)</p>"));
    CHECK(has(page, "Original gravity 1.062 (1.058–1.067)"));
    CHECK(has(page, "bitterness 60 IBU (50–72)"));
    CHECK(has(page, "<strong>6.1</strong> <span class=\"quiet\">3.0–12.2</span>"));
    CHECK(has(page, "to 18B American Pale Ale, 5.7 points fewer"));
}

TEST_CASE("html: an entry that cannot be read tells its fault and no points") {
    const std::string page = page_of_all({not_read("4")});
    CHECK(has(page, "entries.csv:17:10: found no style"));
    CHECK(has(page, "data-risk=\"\""));
    CHECK_FALSE(has(page, "0.0"));
}

TEST_CASE("html: categories are offered in the order of the guide, each once") {
    const std::string page = page_of_all(evening());
    CHECK(has(page, "<option>2A American IPA</option><option>21A American IPA</option><option>2IA</option>"));
}

TEST_CASE("html: a flight leads to the entries that are told") {
    const std::vector<Screened> entries{entry("a", "21A", Status::ready, 0.4),
                                        entry("b", "21A", Status::look, 4.0)};
    const std::string page = screen_page(entries, {1}, flights_of(entries), "");
    CHECK(has(page, "<bdi>a</bdi> <a href=\"#entry-2\"><bdi>b</bdi></a>"));
    CHECK(has(page, "<tr role=\"row\" id=\"entry-2\""));
    CHECK(has(page, "<h1>1 entry</h1>"));
}

TEST_CASE("html: an evening without entries is a page without a script") {
    const std::string page = screen_page({}, {}, {}, "nobody.csv");
    CHECK(has(page, "0 entries"));
    CHECK_FALSE(has(page, "<script"));
    CHECK_FALSE(has(page, "<table"));
}
