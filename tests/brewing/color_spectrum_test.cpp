#include "brewing/color_spectrum.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/published/color.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("light through nothing is the white of D65") {
    // CIE 15, Colorimetry, 2004.
    const Tristimulus white = tristimulus(0.0 * srm, 1.0 * centimeter);
    CHECK(within(white.x, 95.04, 0.01));
    CHECK(within(white.y, 100.00, 1e-9));
    CHECK(within(white.z, 108.88, 0.01));
    const ScreenColor screen = screen_color(white);
    CHECK(screen.red == 255);
    CHECK(screen.green == 255);
    CHECK(screen.blue == 255);
}

TEST_CASE("amber beer in a thin cell") {
    // De Lange, Color, in: Bamforth (editor), Brewing materials and processes, 2016: SRM 10 at 1 cm.
    const Tristimulus light = tristimulus(10.0 * srm, 1.0 * centimeter);
    const LabColor lab = lab_color(light);
    const published::LightThroughBeer& beer = published::light_through_amber_beer;
    CHECK(within(lab.lightness, beer.lightness, 0.3));
    CHECK(within(lab.a, beer.a, 0.3));
    CHECK(within(lab.b, beer.b, 0.3));
    const ScreenColor screen = screen_color(light);
    CHECK(within(screen.red, beer.red, 2.0));
    CHECK(within(screen.green, beer.green, 2.0));
    CHECK(within(screen.blue, beer.blue, 2.0));
}

TEST_CASE("SRM is 12.7 times the absorbance at 430 nm") {
    // American Society of Brewing Chemists, Methods of Analysis, Beer-10.
    CHECK(within(-std::log10(transmission(12.7 * srm, 1.0 * centimeter, 430.0 * nanometer)), 1.0, 1e-9));
    CHECK(within(-std::log10(transmission(12.7 * srm, 1.27 * centimeter, 430.0 * nanometer)), 1.27, 1e-9));
}

TEST_CASE("clear beer absorbs little red light") {
    // Beer-10: clear beer has less than 0.039 of its absorbance at 430 nm left at 700 nm.
    CHECK(-std::log10(transmission(12.7 * srm, 1.0 * centimeter, 700.0 * nanometer)) < 0.039);
}

TEST_CASE("color depends on SRM times path only") {
    const Tristimulus thick = tristimulus(4.0 * srm, 5.0 * centimeter);
    const Tristimulus dark = tristimulus(20.0 * srm, 1.0 * centimeter);
    CHECK(within(thick.x, dark.x, 1e-9));
    CHECK(within(thick.z, dark.z, 1e-9));
}

TEST_CASE("black beer is black") {
    const ScreenColor stout = screen_color(tristimulus(60.0 * srm, 7.0 * centimeter));
    CHECK(stout.red < 80);
    CHECK(stout.green < 20);
    CHECK(stout.blue == 0);
}

TEST_CASE("one SRM is seen in pale beer and not in dark") {
    // Just noticeable is 2.3; Mahy, Van Eycken & Oosterlinck, Color Research and Application 19, 1994, from
    // memory.
    const auto difference = [](double units) {
        const LabColor first = lab_color(tristimulus(units * srm, 5.0 * centimeter));
        const LabColor second = lab_color(tristimulus((units + 1.0) * srm, 5.0 * centimeter));
        return std::hypot(first.lightness - second.lightness, first.a - second.a, first.b - second.b);
    };
    CHECK(difference(4.0) > 2.3);
    CHECK(difference(40.0) < 2.3);
}

TEST_CASE("one in a hundred of white light is of lightness nine") {
    // CIE 15, Colorimetry, 2004: L* of Y = 1 is 116 times the cube root of 0.01 less 16, and 903.3 Y / 100
    // below Y = 0.8856.
    CHECK(within(lab_color({0.9504, 1.0, 1.0888}).lightness, 8.991, 0.001));
    CHECK(within(lab_color({0.4752, 0.5, 0.5444}).lightness, 4.516, 0.001));
}

TEST_CASE("the darkest grays of a screen run straight") {
    // IEC 61966-2-1, sRGB, 1999: 12.92 times the light up to 0.0031308; a hundredth of that light is not
    // seen.
    CHECK(screen_color({0.1901, 0.2, 0.2178}).green == 7);
    CHECK(screen_color({0.0951, 0.1, 0.1089}).green == 3);
}
