#include "base/number.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <limits>
#include <random>
#include <string>

using namespace entrywise;

TEST_CASE("decimal numbers are read") {
    CHECK(number_from("1.062") == 1.062);
    CHECK(number_from("-0.5") == -0.5);
    CHECK(number_from(".5") == 0.5);
    CHECK(number_from("010") == 10.0);
    CHECK(number_from("1e3") == 1000.0);
    CHECK(number_from("0e5") == 0.0);
}

TEST_CASE("what is no finite decimal number is refused") {
    for (const char* text :
         {"",      " ",      "-",  ".",     "-.",    "nan", "NaN", "inf", "-inf", "infinity", "0x10", "0x1p3",
          "1e400", "1e-400", "+1", "1,050", "1_000", " 1",  "1 ",  "1a",  "--1",  "1..2",     "e5"}) {
        CAPTURE(text);
        CHECK_FALSE(number_from(text).has_value());
    }
}

TEST_CASE("a number is read off the front") {
    const auto with_unit = leading_number("150EBC");
    REQUIRE(with_unit);
    CHECK(with_unit->number == 150.0);
    CHECK(with_unit->rest == "EBC");
    const auto span = leading_number("5.0..6.0 %");
    REQUIRE(span);
    CHECK(span->number == 5.0);
    CHECK(span->rest == "..6.0 %");
    CHECK_FALSE(leading_number("kg 5").has_value());
}

TEST_CASE("fixed decimals never show a negative zero") {
    CHECK(fixed(1.0625, 3) == "1.062");
    CHECK(fixed(-0.0004, 3) == "0.000");
    CHECK(fixed(-0.0, 0) == "0");
    CHECK(fixed(-0.6, 0) == "-1");
    CHECK(fixed(1234567.0, 1) == "1234567.0");
}

TEST_CASE("rounded is what fixed prints") {
    CHECK(rounded(1.05649, 3) == 1.056);
    CHECK(rounded(-0.0004, 3) == 0.0);
    CHECK(std::isnan(rounded(std::numeric_limits<double>::quiet_NaN(), 3)));
}

TEST_CASE("fixed and rounded are what the standard library prints and reads") {
    std::mt19937_64 generator(20261129);
    std::uniform_real_distribution<double> exponent(-9.0, 12.0);
    std::uniform_int_distribution<int> any_decimals(0, 12);
    std::uniform_int_distribution<int> halves(-4000, 4000);
    const auto printed = [](double number, int decimals) {
        std::array<char, 400> text{};
        std::snprintf(text.data(), text.size(), "%.*f", decimals, number);
        return std::string(text.data());
    };
    const auto is_printed_so = [&](double number, int decimals) {
        const std::string text = printed(number, decimals);
        const double read = std::strtod(text.c_str(), nullptr);
        const std::string without_sign = read == 0.0 && text.front() == '-' ? text.substr(1) : text;
        return fixed(number, decimals) == without_sign && rounded(number, decimals) == read;
    };
    for (int index = 0; index < 10'000; ++index) {
        const int decimals = any_decimals(generator);
        const double number = (index % 2 == 0 ? 1.0 : -1.0) * std::pow(10.0, exponent(generator));
        REQUIRE(is_printed_so(number, decimals));
        const double tie = 0.5 * halves(generator) / std::pow(10.0, decimals);
        REQUIRE(is_printed_so(tie, decimals));
    }
}

TEST_CASE("the shortest text reads back as the very same number") {
    CHECK(shortest(0.1) == "0.1");
    std::mt19937_64 generator(20210101);
    std::uniform_real_distribution<double> exponent(-300.0, 300.0);
    for (int index = 0; index < 10'000; ++index) {
        const double number = std::pow(10.0, exponent(generator));
        REQUIRE(number_from(shortest(number)) == number);
        REQUIRE(number_from(shortest(-number)) == -number);
    }
}
