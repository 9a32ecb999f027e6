#include "style/variant.hpp"

#include <doctest/doctest.h>

using namespace entrywise;

TEST_CASE("a variant is entered under the code before its dash") {
    CHECK(entered_code("25B-table-pale") == "25B");
    CHECK(entered_code("21B-red") == "21B");
    CHECK(entered_code("21A") == "21A");
}

TEST_CASE("a code with a number behind its dash is no variant") {
    CHECK(entered_code("03-08") == "03-08");
    CHECK(entered_code("X-") == "X-");
    CHECK(entered_code("").empty());
}
