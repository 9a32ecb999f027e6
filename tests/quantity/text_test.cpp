#include "quantity/text.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <clocale>
#include <cmath>
#include <locale>
#include <random>
#include <stdexcept>
#include <string>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

/// The value that a text was read as, or not-a-number for a fault.
template <class Quantity>
double read(std::string_view text) {
    const auto parsed = quantity_from<Quantity>(text);
    const auto* quantity = std::get_if<Quantity>(&parsed);
    return quantity != nullptr ? quantity->value() : std::nan("");
}

template <class Quantity>
TextFault fault_of(std::string_view text) {
    const auto parsed = quantity_from<Quantity>(text);
    const auto* fault = std::get_if<TextFault>(&parsed);
    return fault != nullptr ? *fault : TextFault{};
}

template <class Quantity>
bool is_refused(std::string_view text) {
    return std::holds_alternative<TextFault>(quantity_from<Quantity>(text));
}

template <class Quantity>
Uncertain<Quantity> read_uncertain(std::string_view text) {
    return std::get<Uncertain<Quantity>>(uncertain_from<Quantity>(text));
}

template <class Quantity>
OpenSpan<Quantity> read_open(std::string_view text) {
    return std::get<OpenSpan<Quantity>>(open_span_from<Quantity>(text));
}

template <class Quantity>
bool is_refused_as_uncertain(std::string_view text) {
    return std::holds_alternative<TextFault>(uncertain_from<Quantity>(text));
}

template <class Quantity>
bool is_refused_as_span(std::string_view text) {
    return std::holds_alternative<TextFault>(span_from<Quantity>(text));
}

template <class Quantity>
bool is_refused_as_open_span(std::string_view text) {
    return std::holds_alternative<TextFault>(open_span_from<Quantity>(text));
}

bool same(double value, double expected) {
    return within(value, expected, 1e-12 * std::abs(expected));
}

}  // namespace

TEST_CASE("metric units") {
    CHECK(read<Mass>("5.2 kg") == 5.2);
    CHECK(same(read<Mass>("30g"), 0.030));
    CHECK(same(read<Mass>("  250\tmg "), 0.00025));
    CHECK(same(read<Volume>("20 L"), 0.020));
    CHECK(same(read<Volume>("500 ml"), 0.0005));
    CHECK(same(read<Volume>("2 hL"), 0.2));
    CHECK(same(read<Volume>("1.5m3"), 1.5));
    CHECK(same(read<Duration>("60 min"), 3600.0));
    CHECK(same(read<Duration>("1 week"), 7.0 * 24.0 * 3600.0));
    CHECK(same(read<Duration>("21 days"), 21.0 * 86400.0));
    CHECK(same(read<Concentration>("150 ppm"), 0.150));
    CHECK(same(read<Concentration>("1.5 g/L"), 1.5));
    CHECK(same(read<EvaporationRate>("3.6 L/h"), 1e-6));
    // 1.2 mL in 100 g is 12 mL in a kilogram.
    CHECK(same(read<OilContent>("1.2 mL/100g"), 12e-6));
    CHECK(same(read<OilContent>("1.2 mL/100 g"), 12e-6));
    CHECK(same(read<PitchRate>("0.75 M/mL/P"), 0.75));
    CHECK(same(read<PitchRate>("1.5 M/mL/°P"), 1.5));
}

TEST_CASE("US measures") {
    // NIST Handbook 44, Specifications, tolerances and other technical requirements, appendix C, 2023.
    CHECK(same(read<Mass>("1 lb"), 0.45359237));
    CHECK(same(read<Mass>("1 oz"), 0.028349523125));
    CHECK(same(read<Volume>("1 gal"), 3.785411784e-3));
    CHECK(same(read<Volume>("1 qt"), 0.946352946e-3));
    CHECK(same(read<Volume>("1 fl oz"), 29.5735295625e-6));
    CHECK(within(read<Concentration>("1 oz/gal"), 7.489152, 1e-6));
    CHECK(within(read<EvaporationRate>("1 gal/h"), 1.0515033e-6, 1e-13));
}

TEST_CASE("compound amounts add up") {
    CHECK(same(read<Mass>("4 lb 6 oz"), 70.0 * 0.028349523125));
    CHECK(same(read<Mass>("4lb6oz"), 70.0 * 0.028349523125));
    CHECK(same(read<Volume>("5 gal 1 qt"), 21.0 * 0.946352946e-3));
    CHECK(same(read<Volume>("1 qt 4 fl oz"), 36.0 * 29.5735295625e-6));
    CHECK(same(read<Duration>("1 h 30 min"), 5400.0));
    CHECK(same(read<Duration>("1h30min"), 5400.0));
    CHECK(same(read<Duration>("1 h .5 min"), 3630.0));
    CHECK(same(read<Duration>("1 wk 2 d 3 h"), 788400.0));
    CHECK(is_refused<Mass>("6 oz 4 lb"));
    CHECK(is_refused<Mass>("4 lb 6 lb"));
    CHECK(is_refused<Mass>("4 lb 6"));
    CHECK(is_refused<Mass>("4 lb -6 oz"));
    CHECK(is_refused<Color>("10 SRM 5 EBC"));
    CHECK(is_refused<Temperature>("20 C 5 F"));
}

TEST_CASE("temperatures") {
    // Fixed points of the scales: NIST Special Publication 811, Guide for the Use of the SI, 2008, appendix
    // B.
    CHECK(within(read<Temperature>("0 C"), 273.15, 1e-9));
    CHECK(within(read<Temperature>("32 F"), 273.15, 1e-9));
    CHECK(within(read<Temperature>("212 °F"), 373.15, 1e-9));
    CHECK(within(read<Temperature>("100 ºc"), 373.15, 1e-9));
    CHECK(within(read<Temperature>("-1 C"), 272.15, 1e-9));
    CHECK(within(read<Temperature>("300 K"), 300.0, 1e-9));
    CHECK(to_text(celsius(66.0)) == "66 C");
    CHECK(to_text(celsius(0.0)) == "0 C");
    CHECK(to_text(celsius(100.0), "F") == "212 F");
}

TEST_CASE("gravity stands alone or in degrees Plato") {
    CHECK(read<SpecificGravity>("1.062") == 1.062);
    CHECK(read<SpecificGravity>("1.062 SG") == 1.062);
    // 12 °P is about 1.0484: common practice.
    CHECK(within(read<SpecificGravity>("12 °P"), 1.0484, 0.0001));
    CHECK(read<SpecificGravity>("12 P") == read<SpecificGravity>("12 °P"));
    CHECK(read<SpecificGravity>("12 plato") == read<SpecificGravity>("12 °P"));
    CHECK(read<Extract>("12 °P") == 12.0);
    CHECK(read<Extract>("12 Bx") == 12.0);
    CHECK(to_text(1.062 * specific_gravity) == "1.062");
    CHECK(to_text(specific_gravity * read<SpecificGravity>("12 °P"), "°P") == "12 °P");
}

TEST_CASE("brewing scales") {
    CHECK(read<AlcoholByVolume>("5.2 %") == 5.2);
    CHECK(read<AlcoholByVolume>("5.2 % vol") == 5.2);
    CHECK(read<AlcoholByVolume>("5.2% abv") == 5.2);
    CHECK(same(read<Attenuation>("78 %"), 0.78));
    CHECK(same(read<Share>("5.5%"), 0.055));
    CHECK(read<Bitterness>("38 IBU") == 38.0);
    CHECK(read<Bitterness>("38 ebu") == 38.0);
    // 1 SRM is 1.97 EBC: common practice, rounded.
    CHECK(within(read<Color>("19.7 EBC"), 10.0, 0.01));
    // Crystal malt of 60 °L is sold as about 158 EBC (2.65 L - 1.2): common practice of maltsters.
    CHECK(within(read<MaltColor>("157.8 EBC"), 60.0, 0.5));
    CHECK(read<MaltColor>("60 L") == 60.0);
    CHECK(read<MaltColor>("60 °L") == 60.0);
    CHECK(read<MaltColor>("60 lovibond") == 60.0);
    // 5 g/L of carbon dioxide is about 2.55 volumes: common practice.
    CHECK(within(read<Carbonation>("5 g/L"), 2.55, 0.01));
    CHECK(read<Carbonation>("2.5 vol") == 2.5);
}

TEST_CASE("a missing unit is a fault that names the units and mends it") {
    const TextFault fault = fault_of<Mass>("5.2");
    CHECK(fault.expected == "a mass with its unit (kg, g, lb, oz)");
    CHECK(fault.remedy == "Put the unit behind the number, for instance 5.2 kg.");
    CHECK(fault_of<Share>("72").expected == "a share with its unit (%)");
    CHECK(fault_of<SpecificGravity>("high").expected == "a specific gravity alone or with its unit (SG, °P)");
}

TEST_CASE("a misspelt unit is told with the nearest known") {
    CHECK(fault_of<Mass>("5.2 kgs").nearest == "kg");
    CHECK(fault_of<Bitterness>("38 IUB").nearest == "IBU");
    CHECK(fault_of<Duration>("60 minuets").nearest == "minutes");
    CHECK(fault_of<MaltColor>("60 Lovibnd").nearest == "Lovibond");
    CHECK(fault_of<Color>("12 furlongs").nearest.empty());
    CHECK(fault_of<Mass>("5,2 kg").remedy == "Write a dot as the decimal mark.");
}

TEST_CASE("a value that is not physical is a fault that names the span in the unit written") {
    CHECK(fault_of<Bitterness>("2000 IBU").expected == "a bitterness from 0 to 1000 IBU");
    CHECK(fault_of<SpecificGravity>("1062").expected == "a specific gravity from 0.98 to 1.25");
    CHECK(fault_of<SpecificGravity>("0.97 SG").expected == "a specific gravity from 0.98 to 1.25 SG");
    CHECK(fault_of<Temperature>("400 F").expected == "a temperature from 14 to 302 F");
    CHECK(fault_of<Share>("120 %").expected == "a share from 0 to 100 %");
    CHECK(is_refused<Mass>("-1 kg"));
    CHECK(is_refused<MaltColor>("-1 EBC"));
    CHECK(is_refused<Attenuation>("131 %"));
    CHECK(is_refused<Carbonation>("9 vol"));
    CHECK_FALSE(is_refused<Share>("100 %"));
    CHECK_FALSE(is_refused<Temperature>("302 F"));
    CHECK_FALSE(is_refused<Temperature>("14 F"));
    CHECK_FALSE(is_refused<Mass>("0 g"));
}

TEST_CASE("what is no decimal number is refused") {
    for (const char* text :
         {"", " ", "kg", "nan kg", "inf kg", "-inf kg", "0x10 kg", "1e400 kg", "1e-400 kg", "+5 kg",
          "1_000 kg", "5 5 kg", "5 kg kg", "5 kg,", "--5 kg", ". kg", "..", "5..6 kg", "\xFF kg"}) {
        CAPTURE(text);
        CHECK(is_refused<Mass>(text));
    }
}

TEST_CASE("a spread stands behind the value, the unit behind the last number") {
    for (const char* text : {"5.5 +- 0.4 %", "5.5 ± 0.4 %", "5.5+/-0.4%", "5.5 % +- 0.4 %"}) {
        CAPTURE(text);
        CHECK(same(read_uncertain<Share>(text).middle.value(), 0.055));
        CHECK(same(read_uncertain<Share>(text).half_width.value(), 0.004));
    }
    for (const char* text : {"5.0..6.0 %", "5.0 %..6.0 %", "5 .. 6 %"}) {
        CAPTURE(text);
        CHECK(same(read_uncertain<Share>(text).middle.value(), 0.055));
        CHECK(same(read_uncertain<Share>(text).half_width.value(), 0.005));
    }
    CHECK(read_uncertain<Share>("5.5 %").half_width.value() == 0.0);
    CHECK(same(read_uncertain<Duration>("1 h 30 min +- 5 min").half_width.value(), 300.0));
}

TEST_CASE("the width of a temperature spread has no ice point in it") {
    CHECK(within(read_uncertain<Temperature>("20 +- 2 C").half_width.value(), 2.0, 1e-9));
    CHECK(within(read_uncertain<Temperature>("68 +- 9 F").half_width.value(), 5.0, 1e-9));
    CHECK(within(read_uncertain<Temperature>("68 +- 9 F").middle.value(), 293.15, 1e-9));
    CHECK(within(read_uncertain<Temperature>("-1..3 C").middle.value(), 274.15, 1e-9));
}

TEST_CASE("a spread in degrees Plato becomes one in gravity") {
    const auto uncertain = read_uncertain<SpecificGravity>("12 +- 0.5 °P");
    // 11.5 °P is 1.0463 and 12.5 °P is 1.0505: Bates et al., Polarimetry, saccharimetry and the sugars, NBS
    // Circular C440, 1942 (from memory); the tolerance is the rounding of both.
    CHECK(within(uncertain.half_width.value(), (1.0505 - 1.0463) / 2.0, 0.00005));
    CHECK(to_text(uncertain, "°P") == "12 +- 0.5 °P");
}

TEST_CASE("spreads that cannot be are refused") {
    CHECK(is_refused_as_uncertain<Share>("5.5 +- -0.4 %"));
    CHECK(is_refused_as_uncertain<Share>("5.5 % +- 0.4"));
    CHECK(is_refused_as_uncertain<Share>("5.5 +- 0.4"));
    CHECK(is_refused_as_uncertain<Share>("6..5 %"));
    CHECK(is_refused_as_uncertain<Share>("5.. %"));
    CHECK(is_refused_as_uncertain<Share>("5..6..7 %"));
    CHECK(is_refused_as_uncertain<Share>("+- 1 %"));
    CHECK(is_refused_as_uncertain<Share>("5 +- %"));
    CHECK(is_refused_as_uncertain<Share>("5 +- 200 %"));
    CHECK(is_refused_as_uncertain<Share>("95..105 %"));
}

TEST_CASE("closed spans") {
    const auto gravity = std::get<Span<SpecificGravity>>(span_from<SpecificGravity>("1.048..1.056"));
    CHECK(gravity.low.value() == 1.048);
    CHECK(gravity.high.value() == 1.056);
    const auto single = std::get<Span<Bitterness>>(span_from<Bitterness>("40 IBU"));
    CHECK(single.low.value() == 40.0);
    CHECK(single.high.value() == 40.0);
    CHECK(is_refused_as_span<Bitterness>("70..40 IBU"));
    CHECK(is_refused_as_span<Bitterness>("40.. IBU"));
    CHECK(is_refused_as_span<Bitterness>("3..<5 IBU"));
    CHECK(is_refused_as_span<Bitterness>("40..70"));
    CHECK_FALSE(is_refused_as_span<Mass>("900 g..1.1 kg"));
}

TEST_CASE("open spans") {
    const auto closed = read_open<Bitterness>("40..70 IBU");
    CHECK(closed.low->value() == 40.0);
    CHECK(closed.high->value() == 70.0);
    CHECK_FALSE(closed.below_high);
    const auto upward = read_open<AlcoholByVolume>("8.. %");
    CHECK(upward.low->value() == 8.0);
    CHECK_FALSE(upward.high.has_value());
    const auto downward = read_open<Bitterness>("..5 IBU");
    CHECK_FALSE(downward.low.has_value());
    CHECK(downward.high->value() == 5.0);
    const auto below = read_open<AlcoholByVolume>("3..<5 %");
    CHECK(below.below_high);
    CHECK(below.high->value() == 5.0);
    CHECK(read_open<SpecificGravity>("1.048..").low->value() == 1.048);
    for (const char* text :
         {"", "..", ".. %", "% ..5 %", "3..<", "5..<5 %", "6..5 %", "8..", "3..<5", "<5 %"}) {
        CAPTURE(text);
        CHECK(is_refused_as_open_span<AlcoholByVolume>(text));
    }
}

TEST_CASE("open spans are written as they are read") {
    for (const char* text : {"40..70 IBU", "8.. IBU", "..5 IBU", "3..<5 IBU", "..<5 IBU"}) {
        CHECK(to_text(read_open<Bitterness>(text)) == text);
    }
    CHECK(to_text(read_open<SpecificGravity>("1.048..1.056")) == "1.048..1.056");
    CHECK(to_text(read_open<Temperature>("0..4 C")) == "0..4 C");
    CHECK(to_text(read_open<MaltColor>("0..60 L"), "EBC") == "0..60 L");
}

TEST_CASE("the unit is chosen for the size") {
    CHECK(to_text(5.2 * kilogram) == "5.2 kg");
    CHECK(to_text(0.3 * kilogram) == "300 g");
    CHECK(to_text(0.0 * kilogram) == "0 kg");
    CHECK(to_text(20.0 * liter) == "20 L");
    CHECK(to_text(250.0 * milliliter) == "250 mL");
    CHECK(to_text(90.0 * minute) == "90 min");
    CHECK(to_text(3.0 * hour) == "3 h");
    CHECK(to_text(4.0 * day) == "4 d");
    CHECK(to_text(50.0 * milligram_per_liter) == "50 mg/L");
    CHECK(to_text(3.5 * liter_per_hour) == "3.5 L/h");
    CHECK(to_text(1.2 * milliliter_per_100_gram) == "1.2 mL/100g");
    CHECK(to_text(5.5 * percent) == "5.5 %");
    CHECK(to_text(38.0 * ibu) == "38 IBU");
    CHECK(to_text(70.0 * ounce, "lb") == "4.375 lb");
    CHECK(to_text(5.2 * kilogram, "stone") == "5.2 kg");
    CHECK(to_text(0.0 * lovibond, "EBC") == "0 L");
    CHECK(to_text(Uncertain<Share>{5.5 * percent, 0.4 * percent}) == "5.5 +- 0.4 %");
    CHECK(to_text(Uncertain<Share>{5.5 * percent, 0.0 * percent}) == "5.5 %");
    CHECK(to_text(Uncertain<Temperature>{celsius(20.0), 5.0 * kelvin}, "F") == "68 +- 9 F");
}

TEST_CASE_TEMPLATE("text reads back as the value in every unit", Quantity, Mass, Volume, Duration,
                   Temperature, Concentration, EvaporationRate, OilContent, SpecificGravity, Extract,
                   AlcoholByVolume, Attenuation, Bitterness, Color, MaltColor, Carbonation, Share,
                   PitchRate) {
    const QuantityKind& kind = kind_of<Quantity>();
    std::mt19937 generator(20210101);
    std::uniform_real_distribution<double> even(kind.lowest, kind.highest);
    std::uniform_real_distribution<double> decades(-6.0, 0.0);
    constexpr int values = 2000;
    for (const UnitSpelling& unit : kind.units) {
        for (int index = 0; index < values; ++index) {
            const double small =
                kind.lowest + (kind.highest - kind.lowest) * std::pow(10.0, decades(generator));
            const double canonical = index % 2 == 0 ? even(generator) : small;
            const auto quantity = Quantity::from_value(canonical);
            const std::string text = to_text(quantity, unit.spelling);
            CAPTURE(text);
            REQUIRE(same(read<Quantity>(text), canonical));
            REQUIRE(same(read<Quantity>(to_text(quantity)), canonical));
        }
    }
}

TEST_CASE_TEMPLATE("a short number stays short in every unit", Quantity, Mass, Volume, Duration, Temperature,
                   Concentration, EvaporationRate, OilContent, SpecificGravity, Extract, AlcoholByVolume,
                   Attenuation, Bitterness, Color, MaltColor, Carbonation, Share, PitchRate) {
    std::mt19937 generator(20210102);
    std::uniform_int_distribution<int> thousandths(0, 1'500'000);
    int read_back = 0;
    for (const UnitSpelling& unit : kind_of<Quantity>().units) {
        for (int index = 0; index < 1000; ++index) {
            const bool stands_near_one = unit.spelling == "SG";
            const int number =
                stands_near_one ? 980 + index % 270 : thousandths(generator) / (1 + index % 1000);
            const std::string text = fmt::format("{} {}", number / 1000.0, unit.spelling);
            const auto parsed = quantity_from<Quantity>(text);
            const auto* quantity = std::get_if<Quantity>(&parsed);
            if (quantity == nullptr) {
                continue;
            }
            ++read_back;
            const std::string written = to_text(*quantity, unit.spelling);
            REQUIRE((stands_near_one ? written + " SG" : written) == text);
        }
    }
    CHECK(read_back > 500);
}

TEST_CASE_TEMPLATE("a spread reads back", Quantity, Mass, Temperature, SpecificGravity, Share, MaltColor) {
    const QuantityKind& kind = kind_of<Quantity>();
    const double width = kind.highest - kind.lowest;
    std::mt19937 generator(20210103);
    std::uniform_real_distribution<double> part(0.1, 0.9);
    for (const UnitSpelling& unit : kind.units) {
        for (int index = 0; index < 500; ++index) {
            const auto middle = Quantity::from_value(kind.lowest + width * part(generator));
            const auto half_width = DifferenceOf<Quantity>::from_value(0.1 * width * part(generator));
            const std::string text = to_text(Uncertain<Quantity>{middle, half_width}, unit.spelling);
            CAPTURE(text);
            const auto again = read_uncertain<Quantity>(text);
            REQUIRE(same(again.middle.value(), middle.value()));
            // In degrees Plato the slope is taken at the middle as read.
            REQUIRE(within(again.half_width.value(), half_width.value(), 1e-9 * half_width.value()));
        }
    }
}

TEST_CASE("no text makes reading fail otherwise than by a fault") {
    constexpr std::string_view letters = "0123456789.-+<% kgLPSGE/e°±\xFF\n";
    std::mt19937 generator(20210104);
    std::uniform_int_distribution<std::size_t> letter(0, letters.size() - 1);
    std::uniform_int_distribution<int> length(0, 12);
    for (int index = 0; index < 50'000; ++index) {
        std::string text;
        for (int count = length(generator); count > 0; --count) {
            text += letters[letter(generator)];
        }
        CAPTURE(text);
        const auto span = open_span_from<SpecificGravity>(text);
        if (const auto* read_span = std::get_if<OpenSpan<SpecificGravity>>(&span)) {
            REQUIRE((read_span->low || read_span->high));
        }
        const auto uncertain = uncertain_from<Mass>(text);
        if (const auto* read_mass = std::get_if<Uncertain<Mass>>(&uncertain)) {
            REQUIRE(read_mass->half_width.value() >= 0.0);
            REQUIRE(read_mass->middle.value() >= 0.0);
            REQUIRE(read_mass->middle.value() <= kind_of<Mass>().highest);
        }
    }
}

namespace {

/// Writes numbers as some countries do: a comma as the decimal mark, dots between thousands.
struct CommaAsDecimalMark : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

}  // namespace

TEST_CASE("the locale does not matter") {
    const std::locale before =
        std::locale::global(std::locale(std::locale::classic(), new CommaAsDecimalMark));
    // Not every machine has the C library's own; where it does, that must not matter either.
    std::setlocale(LC_ALL, "de_DE.UTF-8");
    CHECK(read<SpecificGravity>("1.050") == 1.05);
    CHECK(is_refused<SpecificGravity>("1,050"));
    CHECK(to_text(1234.5 * kilogram) == "1234.5 kg");
    CHECK(fault_of<Bitterness>("2000.5 IBU").expected == "a bitterness from 0 to 1000 IBU");
    std::setlocale(LC_ALL, "C");
    std::locale::global(before);
}
