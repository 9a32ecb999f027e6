#include "brewing/mash_fermentability.hpp"

#include <doctest/doctest.h>

#include <array>

#include "tests/published/mash_fermentability.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

MashRest rest(double degrees, double minutes) {
    return {celsius(degrees), minutes * minute};
}

double shift_of_one_rest(double degrees, double minutes = 60.0) {
    const std::array rests = {rest(degrees, minutes)};
    return mash_effect(rests).shift.value() * 100.0;
}

/// The apparent attenuation limit of all-malt wort after an hour at 65 °C.
constexpr double limit_at_65 = published::mashed_worts[0].attenuation;

}  // namespace

TEST_CASE("single rests reach the attenuation that was measured") {
    // Chandrasekhar's mash data, quoted elsewhere.
    for (const published::MashedWort& row : published::mashed_worts) {
        CAPTURE(row.celsius);
        CHECK(within(limit_at_65 + shift_of_one_rest(row.celsius), row.attenuation, 6.0));
    }
}

TEST_CASE("modern malt falls little to 70 degrees") {
    // Terrill, ale strain trial, 2017.
    const published::MashedWort& hot = published::modern_malt_mashed_hot;
    CHECK(limit_at_65 + shift_of_one_rest(66.5) > hot.attenuation);
    CHECK(within(limit_at_65 + shift_of_one_rest(hot.celsius), hot.attenuation, 6.0));
}

TEST_CASE("fermentability is greatest near 65 degrees") {
    // Evans et al., Journal of the American Society of Brewing Chemists 70, 2012.
    CHECK(shift_of_one_rest(62.0) < shift_of_one_rest(65.0));
    CHECK(shift_of_one_rest(68.0) < shift_of_one_rest(65.0));
}

TEST_CASE("a rest for each amylase gains on a single one") {
    // 62..64 then 70..72 °C: up to 2 to 3 points above one rest at 66 °C. Common practice.
    const std::array rests = {rest(63.0, 30.0), rest(72.0, 30.0)};
    const double gain = mash_effect(rests).shift.value() * 100.0 - shift_of_one_rest(66.0);
    CHECK(gain > 1.0);
    CHECK(gain <= 3.0);
}

// Common practice: 20 to 40 minutes of the first rest, ten and more of the second.
TEST_CASE("the shortest rests that brewers give each amylase count as such") {
    const auto shift_of = [](double first, double second) {
        const std::array rests = {rest(63.0, first), rest(72.0, second)};
        return mash_effect(rests).shift.value();
    };
    CHECK(shift_of(20.0, 10.0) > shift_of(19.0, 10.0) + 0.01);
    CHECK(shift_of(20.0, 10.0) > shift_of(20.0, 9.0) + 0.01);
}

TEST_CASE("mash-out and protein rest change nothing to speak of") {
    // Muller, Mash temperature and thickness, Journal of the Institute of Brewing 97, 1991: beta-amylase is
    // spent after an hour.
    const std::array rests = {rest(50.0, 15.0), rest(66.0, 60.0), rest(76.0, 10.0)};
    CHECK(within(mash_effect(rests).shift.value() * 100.0, shift_of_one_rest(66.0), 0.5));
}

TEST_CASE("a short mash leaves points and a long one gains none") {
    // 20 to 30 min leave a few points. Common practice.
    CHECK(shift_of_one_rest(66.0, 25.0) < shift_of_one_rest(66.0) - 1.0);
    CHECK(shift_of_one_rest(66.0, 25.0) > shift_of_one_rest(66.0) - 6.0);
    CHECK(within(shift_of_one_rest(66.0, 120.0), shift_of_one_rest(66.0), 1e-9));
}

TEST_CASE("hot and unknown mashes are known less well") {
    const std::array hot = {rest(74.0, 60.0)};
    const std::array usual = {rest(66.0, 60.0)};
    CHECK(mash_effect(hot).standard_deviation > mash_effect(usual).standard_deviation);
    CHECK(mash_effect({}).shift.value() == 0.0);
    CHECK(mash_effect({}).standard_deviation > mash_effect(usual).standard_deviation);
}

// Common practice: most of the starch is converted in the first quarter of an hour, and what little is not by
// then weighs ever less. The points are working values.
TEST_CASE("a mash cut short leaves points, the first minutes by far the most") {
    const double whole_mash = shift_of_one_rest(66.0, 60.0);
    const auto lost = [&](double minutes) { return whole_mash - shift_of_one_rest(66.0, minutes); };
    CHECK(within(lost(5.0), 14.0, 1.0));
    CHECK(within(lost(10.0), 8.0, 1.0));
    CHECK(lost(5.0) - lost(10.0) > lost(10.0) - lost(15.0));
    CHECK(lost(15.0) - lost(20.0) > lost(25.0) - lost(30.0));
    CHECK(lost(45.0) > 0.0);
}
