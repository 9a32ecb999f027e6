#include "quantity/measures.hpp"

#include <doctest/doctest.h>

#include "quantity/text.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

constexpr Measures metric{};
constexpr Measures customary{.pounds = true, .fahrenheit = true, .gallons = true};

}  // namespace

// NIST Handbook 44, appendix C, 2023: an avoirdupois pound is 453.592 37 g, an ounce a sixteenth of it, a
// gallon 3.785 412 L.
TEST_CASE("amounts are told in the units of the recipe") {
    CHECK(told(453.59237 * gram, customary) == "1 lb");
    CHECK(told(28.349523125 * gram, customary) == "1 oz");
    CHECK(told(3.785411784 * liter, customary) == "1 gal");
    CHECK(told(300.0 * gram, customary) == "10.58 oz");
    CHECK(told(5.25 * kilogram, customary) == "11.57 lb");
    CHECK(told(300.0 * gram, metric) == "300 g");
    CHECK(told(5.25 * kilogram, metric) == "5.25 kg");
    CHECK(told(20.0 * liter, metric) == "20 L");
}

// NIST Special Publication 811, 2008, appendix B: degrees Fahrenheit are 1.8 times those of Celsius and 32.
TEST_CASE("temperatures are told in whole degrees of the recipe's scale") {
    CHECK(within(in_fahrenheit(celsius(100.0)), 212.0, 1e-9));
    CHECK(within(in_celsius(fahrenheit(-40.0)), -40.0, 1e-9));
    CHECK(told(celsius(100.0), customary) == "212 °F");
    CHECK(told(celsius(66.7), customary) == "152 °F");
    CHECK(told(celsius(66.7), metric) == "67 °C");
    CHECK(told(2.0 * kelvin, metric) == "2 °C");
    CHECK(told(5.0 * kelvin, customary) == "9 °F");
    CHECK(within(in_celsius(settable(celsius(66.7), metric)), 67.0, 1e-9));
    CHECK(within(in_celsius(settable(celsius(66.7), customary)), 66.667, 1e-3));
}

TEST_CASE("what is weighed is told to the last digit and reads back") {
    for (double grams = 0.7; grams < 9000.0; grams *= 1.13) {
        for (const Measures& measures : {metric, customary}) {
            const Mass mass = weighable(grams * gram, measures);
            CAPTURE(grams);
            CHECK(weighable(mass, measures) == mass);
            const auto read = quantity_from<Mass>(told(mass, measures));
            REQUIRE(std::holds_alternative<Mass>(read));
            CHECK(within(in(std::get<Mass>(read), gram), in(mass, gram), 1e-6));
            CHECK(within(in(mass, gram), grams, 0.05 * grams + 0.75));
        }
    }
}

// Common practice: nobody measures out a batch to the milliliter.
TEST_CASE("volumes are measured out in steps that a brewer sees") {
    CHECK(told(measurable(20.3 * liter, metric), metric) == "20.5 L");
    CHECK(told(measurable(4.32 * liter, metric), metric) == "4.3 L");
    CHECK(told(measurable(20.3 * liter, customary), customary) == "5.25 gal");
    CHECK(told(measurable(4.32 * liter, customary), customary) == "1.1 gal");
}
