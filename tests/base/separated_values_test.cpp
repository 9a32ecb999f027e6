#include "base/separated_values.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace entrywise;

namespace {

std::vector<std::vector<std::string>> texts(const std::string& text, char separator = ',') {
    const auto rows = separated_values(text, separator, "file", 100);
    REQUIRE(rows);
    std::vector<std::vector<std::string>> result;
    for (const TableRow& row : *rows) {
        result.emplace_back();
        for (const TableField& field : row) {
            result.back().push_back(field.text);
        }
    }
    return result;
}

std::string fault_of(const std::string& text) {
    const auto rows = separated_values(text, ',', "file", 100);
    REQUIRE_FALSE(rows);
    return to_line(rows.faults.front());
}

using Table = std::vector<std::vector<std::string>>;

}  // namespace

// RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files, 2005, section 2, by rule.
TEST_CASE("the rules of RFC 4180") {
    CHECK(texts("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") == Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(texts("aaa,bbb,ccc\r\nzzz,yyy,xxx") == Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(texts("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          Table{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(texts("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          Table{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(texts("\"aaa\",\"b\"\"bb\",\"ccc\"") == Table{{"aaa", "b\"bb", "ccc"}});
    CHECK(texts("a,,c,") == Table{{"a", "", "c", ""}});
}

TEST_CASE("other separators, and lines without text") {
    CHECK(texts("a\tb,c\n\n \t \n1\t2\n", '\t') == Table{{"a", "b,c"}, {"1", "2"}});
    CHECK(texts("", ',').empty());
}

TEST_CASE("fields know where they stand") {
    const auto rows = separated_values("ä,b\n\"x\ny\",z", ',', "file", 100);
    REQUIRE(rows);
    CHECK((*rows)[0][1].position == Position{1, 3});
    CHECK((*rows)[1][0].position == Position{2, 1});
    CHECK((*rows)[1][1].position == Position{3, 4});
}

TEST_CASE("quotation marks where they mean nothing are refused") {
    CHECK(fault_of("a,b\nc,\"d").starts_with("file:2:3: "));
    CHECK(fault_of("a,b\"c").starts_with("file:1:4: "));
    CHECK(fault_of("a,\"b\"c").starts_with("file:1:6: "));
    CHECK(fault_of(std::string(200, ',')).find("more than 100 fields") != std::string::npos);
}
