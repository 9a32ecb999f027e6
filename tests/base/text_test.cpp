#include "base/text.hpp"

#include <doctest/doctest.h>

#include "base/fault.hpp"

using namespace entrywise;

TEST_CASE("trimmed takes blanks and tabs off both ends") {
    CHECK(trimmed(" \t a b\t ") == "a b");
    CHECK(trimmed(" \t ").empty());
    CHECK(trimmed("").empty());
}

TEST_CASE("lowered leaves all but ASCII letters as they are") {
    CHECK(lowered("Kölsch IPA 5°P") == "kölsch ipa 5°p");
}

TEST_CASE("split gives trimmed parts, empty ones too") {
    using Parts = std::vector<std::string_view>;
    CHECK(split("a, b ,,c", ",") == Parts{"a", "b", "", "c"});
    CHECK(split("1.0..2.0", "..") == Parts{"1.0", "2.0"});
    CHECK(split("alone", ",") == Parts{"alone"});
    CHECK(split("", ",") == Parts{""});
    CHECK(split("a b", "") == Parts{"a b"});
}

TEST_CASE("texts are joined and listed") {
    CHECK(joined({"a", "b"}, ", ") == "a, b");
    CHECK(joined({}, ", ").empty());
    CHECK(listed({}).empty());
    CHECK(listed({"a"}) == "a");
    CHECK(listed({"a", "b"}) == "a or b");
    CHECK(listed({"a", "b", "c"}, "and") == "a, b and c");
}

TEST_CASE("UTF-8 is told from what is not") {
    // Well-formed byte sequences: The Unicode Standard, version 15, 2022, table 3-7.
    for (const char* text :
         {"", "plain", "Kölsch", "12 °P", "\xF0\x9F\x8D\xBA", "\xEF\xBF\xBD", "\xF4\x8F\xBF\xBF"}) {
        CAPTURE(text);
        CHECK(is_utf8(text));
    }
    for (const char* text : {"\xFF", "K\xF6lsch", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80",
                             "\xF4\x90\x80\x80", "\xC3", "\xE2\x82", "\x80", "\xF8\x88\x80\x80\x80"}) {
        CAPTURE(visible(text));
        CHECK_FALSE(is_utf8(text));
    }
}

TEST_CASE("characters are counted, not bytes") {
    CHECK(character_count("Kölsch") == 6);
    CHECK(character_count("12 °P") == 5);
    CHECK(character_count("") == 0);
}

TEST_CASE("nothing visible steers a terminal") {
    CHECK(visible("\x1B[31mred") == "\\u{1B}[31mred");
    CHECK(visible("a\nb") == "a\\u{A}b");
    CHECK(visible("\u202Egnp") == "\\u{202E}gnp");
    CHECK(visible("\uFEFFa") == "\\u{FEFF}a");
    CHECK(visible("\xFFz") == "\\x{FF}z");
    CHECK(visible("Kölsch 12 °P") == "Kölsch 12 °P");
}

TEST_CASE("wrapped breaks at blanks and keeps every word") {
    using Lines = std::vector<std::string>;
    CHECK(wrapped("a beer of clear gold", 8) == Lines{"a beer", "of clear", "gold"});
    CHECK(wrapped("extraordinarily dry", 5) == Lines{"extraordinarily", "dry"});
    CHECK(wrapped("  ", 5).empty());
    CHECK(wrapped("Kölsch Kölsch", 13) == Lines{"Kölsch Kölsch"});
}

TEST_CASE("a fault is one line with its place") {
    const Fault fault{.place = {"slack.yaml", {3, 7}},
                      .found = "crystl",
                      .expected = "a malt",
                      .nearest = "crystal",
                      .remedy = "Write crystal."};
    CHECK(to_line(fault) ==
          "slack.yaml:3:7: found crystl, expected a malt; nearest known: crystal. Write crystal.");
    const Fault bare{
        .place = {"a\nb", {}}, .found = "a folder", .expected = "a file", .nearest = {}, .remedy = {}};
    CHECK(to_line(bare) == "a\\u{A}b: found a folder, expected a file");
}
