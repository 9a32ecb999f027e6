#include "style/competition.hpp"

#include <doctest/doctest.h>

using namespace entrywise;

namespace {

Competition cup() {
    Competition competition;
    competition.tables = {{"4", "Hop Locker", {"hop-type", "strength"}}};
    competition.accepted = {{{"bjcp-2021", "21B"}, 0}, {{"bjcp-2021", "23A"}, {}}};
    competition.must_declare = {"allergens"};
    return competition;
}

}  // namespace

TEST_CASE("a style is accepted with its variants, in its own guide alone") {
    CHECK(accepts(cup(), {"bjcp-2021", "21B"}));
    CHECK(accepts(cup(), {"bjcp-2021", "21B-red"}));
    CHECK(accepts(cup(), {"bjcp-2021", "23A"}));
    CHECK_FALSE(accepts(cup(), {"bjcp-2021", "21A"}));
    CHECK_FALSE(accepts(cup(), {"club", "21B"}));
}

TEST_CASE("a variant is judged at the table of its style") {
    const Competition competition = cup();
    const CompetitionTable* table = table_of(competition, {"bjcp-2021", "21B-red"});
    REQUIRE(table != nullptr);
    CHECK(table->name == "Hop Locker");
    CHECK(table_of(competition, {"bjcp-2021", "23A"}) == nullptr);
    CHECK(table_of(competition, {"bjcp-2021", "21A"}) == nullptr);
}

TEST_CASE("style, table and competition ask for declarations, each told once") {
    Style style;
    style.guide = "bjcp-2021";
    style.code = "21B-red";
    style.must_declare = {"type", "strength"};
    CHECK(declarations_asked(cup(), style) ==
          std::vector<std::string>{"type", "strength", "hop-type", "allergens"});
    style.code = "23A";
    style.must_declare = {};
    CHECK(declarations_asked(cup(), style) == std::vector<std::string>{"allergens"});
}
