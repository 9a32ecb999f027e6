#include "screening/entry_line.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace entrywise;

namespace {

ClubEntry entry_of(const std::string& text, std::size_t number = 1) {
    return entry_of_line({text, number, false}, "input");
}

std::string fault_of_line(const std::string& text, std::size_t number = 1) {
    const ClubEntry entry = entry_of(text, number);
    REQUIRE_FALSE(entry.faults.empty());
    return to_line(entry.faults.front());
}

}  // namespace

TEST_CASE("a line says an entry, with the recipe in it") {
    const ClubEntry entry = entry_of(
        R"({"entry": 12, "brewer": "Maren", "category": "21A", "declares": {"strength": "standard"},)"
        R"( "recipe": {"name": "Slack Tide"}, "table": 3, "paid": true})",
        5);
    CHECK(entry.faults.empty());
    CHECK(entry.number == "12");
    CHECK(entry.declares.at("strength") == "standard");
    REQUIRE(entry.recipe.has_value());
    const Node* const name = value_of(*entry.recipe, "name");
    REQUIRE(name != nullptr);
    CHECK(name->text == "Slack Tide");
    CHECK(name->position.line == 5);
    REQUIRE(entry.columns.size() == 2);
    CHECK(entry.columns[0].name == "table");
    CHECK_FALSE(entry.columns[0].value.quoted);
}

TEST_CASE("a recipe may stand in a file") {
    const ClubEntry entry =
        entry_of(R"({"recipe": "a/b.yaml", "pick": 2, "base": "18B", "brewer": null})", 9);
    CHECK(entry.number == "line 9");
    CHECK(entry.recipe_file == "a/b.yaml");
    CHECK(entry.pick == "2");
    CHECK(entry.base == "18B");
    CHECK(entry.brewer.empty());
}

TEST_CASE("an empty number is none, as an empty field of a table is") {
    for (const std::string nothing : {"", " ", "\\t "}) {
        CAPTURE(nothing);
        CHECK(entry_of(R"({"entry": ")" + nothing + R"(", "recipe": "a.yaml"})", 4).number == "line 4");
        CHECK(fault_of_line(R"({"entry": "1", "recipe": ")" + nothing + R"("})").find("found no `recipe`") !=
              std::string::npos);
    }
}

TEST_CASE("a bad line is an entry with a fault that tells its line") {
    CHECK(fault_of_line("{\"entry\": 1,", 17).starts_with("input:17:"));
    CHECK(fault_of_line("[]", 3).starts_with("input:3:1: found no object"));
    CHECK(fault_of_line("{}").starts_with("input:1:1: found no `recipe`"));
    CHECK(fault_of_line(R"({"recipe": ["a"]})")
              .starts_with("input:1:12: found a list or an object for `recipe`"));
    CHECK(fault_of_line(R"({"recipe": "a", "recipe": "b"})").find("again") != std::string::npos);
    const ClubEntry too_long = entry_of_line({"", 4, true}, "input");
    REQUIRE(too_long.faults.size() == 1);
    CHECK(too_long.faults[0].place == Place{"input", {4, 1}});
}
