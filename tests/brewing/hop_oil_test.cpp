#include "brewing/hop_oil.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

// Common practice of packaging hoppy beer: half of the aroma is gone in two to three months in the warm, and
// the cold keeps it far longer.
TEST_CASE("hop aroma halves in two to three months in the warm, and much more slowly in the cold") {
    const auto left = [](double days, double degrees) {
        return in(hop_oil_left_after_keeping(days * day, celsius(degrees)), whole);
    };
    CHECK(left(0.0, 20.0) == 1.0);
    CHECK(left(60.0, 20.0) > 0.5);
    CHECK(left(91.0, 20.0) < 0.5);
    CHECK(left(91.0, 4.0) > 0.75);
    CHECK(left(91.0, 30.0) < left(91.0, 20.0));
}

TEST_CASE("a hundred grams of hops with 1.5 mL in a hectoliter are 1.5 mL/hL") {
    // The yardstick of dry hopping. Common practice.
    const Share dose = oil_dose(100.0 * gram / hectoliter, 1.5 * milliliter_per_100_gram);
    CHECK(within(dose / milliliter_per_hectoliter, 1.5, 1e-9));
}

TEST_CASE("late is more, and dry hops most") {
    // Kappler et al., Journal of the Institute of Brewing, 2011: boiling for 60 to 90 min leaves traces.
    // Order: common practice.
    const Share after_60 = oil_left_after_boil(60.0 * minute);
    const Share after_20 = oil_left_after_boil(20.0 * minute);
    const Share after_10 = oil_left_after_boil(10.0 * minute);
    const Share after_0 = oil_left_after_boil(0.0 * minute);
    CHECK(after_60 < 0.05 * after_0);
    CHECK(after_60 < after_20);
    CHECK(after_20 < after_10);
    CHECK(after_10 < after_0);
    for (const double degrees : {100.0, 90.0, 75.0, 60.0}) {
        CAPTURE(degrees);
        const Share whirlpool = oil_left_after_whirlpool(20.0 * minute, celsius(degrees));
        CHECK(after_0 < whirlpool);
        for (const double rate : {1.0, 4.0, 8.0}) {
            CAPTURE(rate);
            CHECK(whirlpool < oil_won_by_dry_hop(rate * gram_per_liter, 3.0 * day));
        }
    }
}

TEST_CASE("a cool whirlpool keeps more than a hot one") {
    CHECK(oil_left_after_whirlpool(20.0 * minute, celsius(75.0)) >
          oil_left_after_whirlpool(20.0 * minute, celsius(95.0)));
}

TEST_CASE("a heavier dry hop gives more, but less for each gram") {
    // Hauser, Lafontaine & Shellhammer, Extraction efficiency of dry-hopping, Journal of the American Society
    // of Brewing Chemists 77, 2019.
    const auto yield = [](double grams_per_liter) {
        return oil_won_by_dry_hop(grams_per_liter * gram_per_liter, 1.0 * day).value();
    };
    CHECK(yield(8.0) < yield(4.0));
    CHECK(yield(16.0) < yield(8.0));
    CHECK(8.0 * yield(8.0) > 4.0 * yield(4.0));
    CHECK(16.0 * yield(16.0) > 8.0 * yield(8.0));
}

TEST_CASE("flavor fades more slowly in the boil than aroma") {
    // Common practice: hops of 15 to 30 min are called flavor hops.
    CHECK(hop_flavor_left_after_boil(20.0 * minute) > oil_left_after_boil(20.0 * minute));
    CHECK(within(hop_flavor_left_after_boil(0.0 * minute).value(), oil_left_after_boil(0.0 * minute).value(),
                 1e-12));
}

TEST_CASE("a day wins nearly all") {
    // Wolfe, thesis on dry-hop extraction, 2012: terpene alcohols rise to 24 h.
    const Concentration rate = 4.0 * gram_per_liter;
    CHECK(oil_won_by_dry_hop(rate, 24.0 * hour) > 0.94 * oil_won_by_dry_hop(rate, 7.0 * day));
    CHECK(oil_won_by_dry_hop(rate, 4.0 * hour) < 0.6 * oil_won_by_dry_hop(rate, 7.0 * day));
    CHECK(oil_won_by_dry_hop({}, 24.0 * hour).value() > 0.0);
}

// Common practice: what happens in hoppy beer goes two to three times as fast for each 10 degrees;
// two and a half is a working value.
TEST_CASE("ten degrees colder keep hop aroma two and a half times as long") {
    const Share warm = hop_oil_left_after_keeping(40.0 * day, celsius(20.0));
    CHECK(within(in(hop_oil_left_after_keeping(100.0 * day, celsius(10.0)), whole), in(warm, whole), 0.01));
    CHECK(within(in(hop_oil_left_after_keeping(250.0 * day, celsius(0.0)), whole), in(warm, whole), 0.01));
}

TEST_CASE("a stand keeps less by even steps from 70 to 95 degrees, and no more below or less above") {
    const auto kept = [](double degrees) {
        return in(oil_left_after_whirlpool(30.0 * minute, celsius(degrees)), whole);
    };
    CHECK(within(kept(82.5), 0.5 * (kept(70.0) + kept(95.0)), 1e-9));
    CHECK(within(kept(77.0) - kept(78.0), kept(91.0) - kept(92.0), 1e-9));
    CHECK(kept(77.0) > kept(78.0));
    CHECK(kept(65.0) == kept(70.0));
    CHECK(kept(99.0) == kept(95.0));
}
