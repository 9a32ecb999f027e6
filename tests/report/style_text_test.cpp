#include "report/style_text.hpp"

#include <doctest/doctest.h>

#include "tests/has.hpp"
#include "tests/report/sample_check.hpp"

using namespace entrywise;
using entrywise::testing::has;

TEST_CASE("a style is told in ranges and words") {
    const std::string text = style_text(sample_style(), {80, false, false});
    CHECK(has(text, "7C Quay Pale Bière"));
    CHECK(has(text, "1.056–1.070"));
    CHECK(has(text, "medium to high"));
    CHECK(has(text, "medium-low to medium-high (taken for granted)"));
    CHECK(has(text, "Must be declared: strength."));
    CHECK(has(text, "not given"));
}

TEST_CASE("styles are listed a line each, within the page") {
    for (const std::size_t width : {60U, 80U, 160U}) {
        const std::string text = style_list_text({sample_style(), sample_style()}, {width, false, true});
        CHECK(widest_line(text) <= width);
        CHECK(has(text, "\n2 styles\n"));
    }
}
