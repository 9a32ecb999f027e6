#include "reading/competition_reader.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <string>

#include "reading/document_file.hpp"
#include "reading/yaml_document.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Competition competition_of(const std::string& lines) {
    const auto document =
        yaml_document("format: entrywise/competition/1\nname: Harbor Cup\n" + lines, "cup.yaml");
    REQUIRE(document);
    const auto competition = read_competition(*document, usual_library(), "cup.yaml");
    for (const Fault& fault : competition.faults) {
        MESSAGE(to_line(fault));
    }
    REQUIRE(competition);
    return *competition;
}

std::vector<std::string> codes_of(const Competition& competition) {
    std::vector<std::string> codes;
    for (const AcceptedStyle& style : competition.accepted) {
        codes.push_back(style.name.guide + "/" + style.name.code);
    }
    return codes;
}

const std::map<std::string, std::string> bad_competitions{
    {"accepts-a-word",
     ":3:10: found 'everything', expected a list of styles, or of tables with styles. Start each item with a "
     "dash, or put brackets around them."},
    {"guide-in-a-code",
     ":3:11: found the unknown guide 'ba-2052', expected the code of a known style, or what the codes of a "
     "category begin with; nearest known: ba-2025"},
    {"half-an-entry", ":3:21: found '2.5', expected a whole number from 1 to 1000"},
    {"list-as-style", ":4:25: found a list, expected the code of a style or of a category"},
    {"no-name", ":1:1: found a competition without 'name', expected the key 'name'"},
    {"nothing-accepted",
     ":3:10: found no style that is accepted, expected at least one. Leave 'accepts' out to accept all of "
     "the "
     "guide."},
    {"style-of-a-name",
     ":3:11: found no style 'schwarzbeer' in the guide 'bjcp-2021', expected the code of a known style, or "
     "what the codes of a category begin with; nearest known: 8B"},
    {"style-twice",
     ":5:25: found bjcp-2021/18B again, expected each style once. A category stands for all of its styles, a "
     "style for its variants."},
    {"table-twice", ":5:5: found the table '1' again, expected each table once"},
    {"table-without-styles", ":4:5: found a table without 'styles', expected the key 'styles'"},
    {"unknown-category",
     ":3:15: found no style '77' in the guide 'bjcp-2021', expected the code of a known style, or what the "
     "codes of a category begin with; nearest known: 7A"},
    {"unknown-guide",
     ":3:8: found 'bjcp-2012', expected one of ba-2025, bjcp-2021; nearest known: bjcp-2021"},
    {"unknown-key",
     ":3:1: found the key 'acepts', expected a key of a competition: format, name, guide, declares, "
     "entries_per_brewer or accepts; nearest known: accepts"},
    {"unknown-style",
     ":4:30: found no style '21Q' in the guide 'bjcp-2021', expected the code of a known style, or what the "
     "codes of a category begin with; nearest known: 21A"},
    {"wrong-version",
     ":1:9: found 'entrywise/competition/2', expected 'entrywise/competition/1'. This program reads version "
     "1 "
     "alone."},
};

}  // namespace

TEST_CASE("each bad competition is refused with its one message, and each message has its file") {
    const std::filesystem::path folder =
        std::filesystem::path(ENTRYWISE_SOURCE_DIR) / "tests/data/bad-competitions";
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        const std::string path = entry.path().string();
        CAPTURE(path);
        const auto expected = bad_competitions.find(entry.path().stem().string());
        REQUIRE(expected != bad_competitions.end());
        const auto document = read_document_file(path);
        REQUIRE(document);
        const auto competition = read_competition(*document, usual_library(), path);
        REQUIRE_FALSE(competition);
        REQUIRE(competition.faults.size() == 1);
        CHECK(to_line(competition.faults.front()) == path + expected->second);
        ++files;
    }
    CHECK(files == bad_competitions.size());
}

TEST_CASE("a category stands for its styles, and codes of both guides may stand side by side") {
    // Beer Judge Certification Program, Beer Style Guidelines, 2021: category 18 holds 18A and 18B, category
    // 1 holds 1A to 1D; Brewers Association, Beer Style Guidelines, 2025, by its order: 02-01 to 02-03.
    const Competition competition = competition_of("accepts: [18, 1, 21a, ba-2025/02]\n");
    CHECK(codes_of(competition) == std::vector<std::string>{"bjcp-2021/18A", "bjcp-2021/18B", "bjcp-2021/1A",
                                                            "bjcp-2021/1B", "bjcp-2021/1C", "bjcp-2021/1D",
                                                            "bjcp-2021/21A", "ba-2025/02-01", "ba-2025/02-02",
                                                            "ba-2025/02-03"});
}

TEST_CASE("tables keep their styles, names and declarations") {
    const Competition competition = competition_of(
        "entries_per_brewer: 3\n"
        "declares: [allergens]\n"
        "accepts:\n"
        "  - {table: 4, name: Hop Locker, styles: [21A, 21B], declares: [hop-type]}\n"
        "  - 23A\n");
    CHECK(competition.entries_per_brewer == 3);
    const CompetitionTable* table = table_of(competition, {"bjcp-2021", "21A"});
    REQUIRE(table != nullptr);
    CHECK(table->code == "4");
    CHECK(table->name == "Hop Locker");
    CHECK(table_of(competition, {"bjcp-2021", "23A"}) == nullptr);
    CHECK(accepts(competition, {"bjcp-2021", "23A"}));
}

TEST_CASE("what says nothing of accepted styles accepts all of the guide") {
    const Competition competition = competition_of("guide: ba-2025\n");
    CHECK(competition.accepted.size() == usual_library().style_names("ba-2025").size());
    CHECK_FALSE(accepts(competition, {"bjcp-2021", "21A"}));
}

TEST_CASE("accepted styles come with their variants and ask for what the competition asks for") {
    const auto styles = styles_accepted(
        competition_of(
            "declares: [allergens]\naccepts: [{table: 4, styles: [21B], declares: [hop-type]}, 21A]\n"),
        usual_library());
    REQUIRE(styles);
    const auto asks = [&](const std::string& code, const std::string& declaration) {
        const auto style = std::find_if(styles->begin(), styles->end(),
                                        [&](const Style& each) { return each.code == code; });
        REQUIRE(style != styles->end());
        return std::find(style->must_declare.begin(), style->must_declare.end(), declaration) !=
               style->must_declare.end();
    };
    CHECK(asks("21B-red", "hop-type"));
    CHECK(asks("21B-red", "allergens"));
    CHECK(asks("21A", "allergens"));
    CHECK_FALSE(asks("21A", "hop-type"));
    for (const Style& style : *styles) {
        CHECK((style.code == "21A" || style.code.starts_with("21B")));
    }
}

TEST_CASE("a declaration that is nearly a known one is worth a look, one of its own is not") {
    const std::string text =
        "format: entrywise/competition/1\nname: Cup\ndeclares: [allergens]\n"
        "accepts:\n  - {table: 1, styles: [18A], declares: [strenght, fruit]}\n";
    const auto document = yaml_document(text, "cup.yaml");
    const auto competition = read_competition(*document, usual_library(), "cup.yaml");
    REQUIRE(competition);
    const auto remarks = competition_remarks(*document, *competition, {"strength", "fruit"});
    REQUIRE(remarks.size() == 1);
    CHECK(to_line(remarks.front()) ==
          "cup.yaml:5:42: found 'strenght', expected a known declaration; nearest known: strength");
}
