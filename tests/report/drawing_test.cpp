#include <doctest/doctest.h>

#include "base/text.hpp"
#include "report/gauge.hpp"
#include "report/number_table.hpp"
#include "report/plain_ascii.hpp"
#include "report/terminal.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_check.hpp"

using namespace entrywise;
using entrywise::testing::has;

namespace {

constexpr TextStyle typed{80, false, true};
constexpr TextStyle drawn{80, false, false};

}  // namespace

TEST_CASE("a gauge has its columns and shows where the beer stands") {
    const std::string inside = gauge({50.0, 48.0, 52.0}, 40.0, 60.0, 21, typed);
    CHECK(inside.size() == 21);
    CHECK(inside.find('[') < inside.find('O'));
    CHECK(inside.find('O') < inside.find(']'));
    const std::string above = gauge({66.0, 64.0, 68.0}, 40.0, 60.0, 21, typed);
    CHECK(above.find(']') < above.find('O'));
    CHECK(character_count(gauge({50.0, 48.0, 52.0}, 40.0, 60.0, 21, drawn)) == 21);
}

TEST_CASE("a gauge points to what it can't show") {
    CHECK(gauge({500.0, 480.0, 520.0}, 40.0, 60.0, 21, typed).back() == '>');
    CHECK(gauge({1.0, 0.0, 2.0}, 40.0, 60.0, 21, typed).front() == '<');
}

TEST_CASE("a gauge of a range with an open end has one end") {
    const std::string text = gauge({9.0, 8.0, 10.0}, {}, 14.0, 21, typed);
    CHECK(has(text, "]"));
    CHECK_FALSE(has(text, "["));
    CHECK(text.find('O') < text.find(']'));
}

TEST_CASE("a bar is full for the whole, empty for nothing, and never empty for something") {
    CHECK(bar(20.0, 20.0, 10, typed) == "==========");
    CHECK(bar(0.0, 20.0, 10, typed) == "..........");
    CHECK(bar(0.01, 20.0, 10, typed) == "=.........");
    CHECK(bar(10.0, 20.0, 10, typed) == "=====.....");
}

TEST_CASE("spans stand with their dashes under each other") {
    CHECK(span_text("1.056", "1.070", typed) == "1.056-1.070");
    CHECK(span_text("40", "70", typed) == "   40-70   ");
    CHECK(range_text({8.0, {}, false}, 1, typed) == "    8 up   ");
    CHECK(range_text({{}, 5.0, false}, 0, typed) == "   to 5    ");
    CHECK(range_text({1.05, 1.06, false}, 3, typed) == "1.050-1.060");
}

TEST_CASE("plain ASCII keeps the letters and names the rest") {
    CHECK(plain_ascii("Kölsch – 12 °P, “dry”") == "Kolsch - 12 P, \"dry\"");
    CHECK(plain_ascii("ビ") == "\\u{30D3}");
    CHECK(plain_ascii("\xF0\x9F\x8D\xBA") == "\\u{1F37A}");
}

TEST_CASE("a paragraph fills its lines and breaks words that are longer than one") {
    const TextStyle narrow{10, false, true};
    CHECK(paragraph("one two three", 0, 2, narrow) == "one two\n  three\n");
    CHECK(paragraph("abcdefghijklmnop", 0, 0, narrow) == "abcdefghij\nklmnop\n");
    CHECK(paragraph("abc def ghi jkl", 2, 0, narrow) == "  abc def\nghi jkl\n");
    CHECK(paragraph("", 0, 0, narrow).empty());
}

TEST_CASE("a number stays with its unit") {
    CHECK(paragraph("take 3.4 kg", 0, 0, {8, false, true}) == "take\n3.4 kg\n");
}

TEST_CASE("an interval does not hide the ends of the range") {
    CHECK(gauge({50.0, 30.0, 70.0}, 40.0, 60.0, 9, typed) == "==+=O=+==");
}

TEST_CASE("cut texts show that something is missing") {
    CHECK(cut_end("abcdef", 4, typed) == "abc~");
    CHECK(cut_front("abcdef", 4, typed) == "~def");
    CHECK(cut_end("äöüß", 3, drawn) == "äö…");
    CHECK(cut_front("äöüß", 4, drawn) == "äöüß");
}
