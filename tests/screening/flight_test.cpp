#include "screening/flight.hpp"

#include <doctest/doctest.h>

#include <vector>

using namespace entrywise;

namespace {

Screened entry(const std::string& number, const StyleName& style, double alcohol_percent,
               double bitterness_units) {
    Screened screened;
    screened.entry.number = number;
    screened.style = style;
    screened.style_title = "Saison (standard, pale)";
    screened.status = Status::ready;
    BeerFigures figures{};
    const AlcoholByVolume alcohol = alcohol_percent * percent_by_volume;
    const Bitterness bitterness = bitterness_units * ibu;
    figures.alcohol = {alcohol, alcohol, alcohol};
    figures.bitterness = {bitterness, bitterness, bitterness};
    screened.figures = figures;
    return screened;
}

std::vector<std::string> order_of(const Flight& flight, const std::vector<Screened>& entries) {
    std::vector<std::string> numbers;
    for (const std::size_t place : flight.order) {
        numbers.push_back(entries[place].entry.number);
    }
    return numbers;
}

}  // namespace

// Common practice of competitions: from low to high alcohol, from mild to bitter.
TEST_CASE("a flight goes from light to strong") {
    const StyleName style{"bjcp-2021", "34B"};
    const std::vector<Screened> entries{entry("barleywine", style, 10.0, 70.0),
                                        entry("mild", style, 3.4, 18.0), entry("bitter", style, 4.2, 32.0),
                                        entry("IPA", style, 6.5, 60.0),
                                        entry("the same bitter", style, 4.2, 32.0)};
    const auto flights = flights_of(entries);
    REQUIRE(flights.size() == 1);
    CHECK(order_of(flights[0], entries) ==
          std::vector<std::string>{"mild", "bitter", "the same bitter", "IPA", "barleywine"});
    CHECK(flights[0].alcohol.low == 3.4 * percent_by_volume);
    CHECK(flights[0].alcohol.high == 10.0 * percent_by_volume);
    CHECK(flights[0].bitterness.high == 70.0 * ibu);
}

TEST_CASE("flights stand in the order of the guide, variants of a style together") {
    Screened unread;
    const std::vector<Screened> entries{entry("a", {"bjcp-2021", "10A"}, 5.0, 12.0),
                                        entry("b", {"bjcp-2021", "25B-standard-pale"}, 6.0, 30.0),
                                        entry("c", {"bjcp-2021", "2A"}, 5.0, 20.0),
                                        entry("d", {"bjcp-2021", "25B-table-dark"}, 4.0, 25.0),
                                        entry("e", {"ba-2025", "03-08"}, 6.0, 60.0),
                                        unread};
    const auto flights = flights_of(entries);
    REQUIRE(flights.size() == 4);
    CHECK(flights[0].category == StyleName{"ba-2025", "03-08"});
    CHECK(flights[1].category.code == "2A");
    CHECK(flights[2].category.code == "10A");
    CHECK(flights[3].category.code == "25B");
    CHECK(flights[3].title == "Saison");
    CHECK(order_of(flights[3], entries) == std::vector<std::string>{"d", "b"});
}

TEST_CASE("a recipe that is entered twice is told at the second") {
    std::vector<Screened> entries{entry("1", {"bjcp-2021", "8B"}, 5.0, 28.0),
                                  entry("2", {"bjcp-2021", "8B"}, 5.0, 28.0),
                                  entry("3", {"bjcp-2021", "5D"}, 5.0, 28.0), Screened{}, Screened{}};
    entries[0].fingerprint = entries[2].fingerprint = 7;
    entries[1].fingerprint = 8;
    mark_duplicates(entries);
    CHECK(entries[0].duplicate_of.empty());
    CHECK(entries[1].duplicate_of.empty());
    CHECK(entries[2].duplicate_of == "1");
    CHECK(entries[4].duplicate_of.empty());
}
