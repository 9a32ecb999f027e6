#include "screening/entry_table.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace entrywise;

namespace {

std::vector<ClubEntry> entries_of(const std::string& text) {
    const auto entries = read_entry_table(text, "club/entries.csv");
    REQUIRE(entries);
    return *entries;
}

std::string fault_of_table(const std::string& text) {
    const auto entries = read_entry_table(text, "entries.csv");
    REQUIRE_FALSE(entries);
    return to_line(entries.faults.front());
}

}  // namespace

TEST_CASE("a table names its columns in any order, and what is unknown is handed on") {
    const auto entries = entries_of(
        "Recipe,table,Entry Number,category,declares,brewer\r\n"
        "a.yaml,\"A, left\",7,21A,\"strength: standard; color: pale\",Maren\r\n");
    REQUIRE(entries.size() == 1);
    const ClubEntry& entry = entries.front();
    CHECK(entry.number == "7");
    CHECK(entry.recipe_file == "club/a.yaml");
    CHECK(entry.category == "21A");
    CHECK(entry.brewer == "Maren");
    CHECK(entry.declares == std::map<std::string, std::string>{{"color", "pale"}, {"strength", "standard"}});
    REQUIRE(entry.columns.size() == 1);
    CHECK(entry.columns[0].name == "table");
    CHECK(entry.columns[0].value.text == "A, left");
    CHECK(entry.faults.empty());
}

TEST_CASE("tables as spreadsheets of other countries write them") {
    CHECK(entries_of("\xEF\xBB\xBF"
                     "entry;recipe\n1;a.yaml\n")[0]
              .recipe_file == "club/a.yaml");
    CHECK(entries_of("entry\trecipe\n1\ta, b.yaml\n")[0].recipe_file == "club/a, b.yaml");
    CHECK(entries_of("recipe\na.yaml\n/b.yaml\n")[1].recipe_file == "/b.yaml");
}

TEST_CASE("an entry without a number is called by its place") {
    const auto entries = entries_of("recipe\na.yaml\n\nb.yaml\n");
    REQUIRE(entries.size() == 2);
    CHECK(entries[1].number == "2");
}

TEST_CASE("a wrong line is a fault of its entry alone, with its place") {
    const auto entries = entries_of(
        "entry,recipe\n"
        "1,a.yaml\n"
        "2,b.yaml,c\n"
        "3,\n"
        "1,d.yaml\n");
    REQUIRE(entries.size() == 4);
    CHECK(entries[0].faults.empty());
    CHECK(to_line(entries[1].faults.at(0))
              .starts_with("club/entries.csv:3:10: found 3 fields, expected the 2"));
    CHECK(to_line(entries[2].faults.at(0)).starts_with("club/entries.csv:4:1: found no recipe"));
    CHECK(to_line(entries[3].faults.at(0)).starts_with("club/entries.csv:5:1: found the entry 1 again"));
    CHECK(entries_of("entry,recipe,declares\n1,a.yaml,strong\n")[0].faults.size() == 1);
}

TEST_CASE("what is no table of entries is refused") {
    CHECK(fault_of_table("").starts_with("entries.csv: found nothing"));
    CHECK(fault_of_table("entry,category\n1,21A\n").starts_with("entries.csv:1:1: found no column 'recipe'"));
    CHECK(fault_of_table("recipe,style,category\na.yaml,,\n")
              .starts_with("entries.csv:1:14: found the column 'category' again"));
    CHECK(fault_of_table("recipe\n\"a.yaml\n").starts_with("entries.csv:2:1: found a quotation mark"));
}
