#include "sensing/appearance.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// The clarity of a plain beer with a change.
template <class Change>
double clarity_with(Change change) {
    ClarityInputs inputs;
    change(inputs);
    return clarity_level(inputs);
}

double plain_clarity() {
    return clarity_level(ClarityInputs());
}

double retention_at(double grain, double ibus, double alcohol, double adjuncts, double volumes, double sour) {
    return head_retention_level(grain * gram_per_liter, ibus * ibu, alcohol * percent_by_volume, adjuncts,
                                volumes * volume_of_co2, sour);
}

double usual_retention() {
    return retention_at(0.0, 30.0, 5.0, 0.0, 2.4, 0.0);
}

}  // namespace

// Common practice: a settled home brew pours clear, a filtered one brilliant.
TEST_CASE("a plain beer pours clear, filtered or long cold it is brilliant") {
    CHECK(within(plain_clarity(), 4.0, 0.5));
    CHECK(clarity_with([&](ClarityInputs& beer) { beer.filtered = true; }) == 5.0);
    CHECK(clarity_with([&](ClarityInputs& beer) {
              beer.fined = true;
              beer.cold_weeks = 6.0;
          }) > plain_clarity());
}

// Common practice: a wheat beer of half wheat and loose yeast pours hazy to cloudy; so does a heavily dry
// hopped beer of a haze-positive yeast with oats.
TEST_CASE("wheat with loose yeast, and oats with much dry hop, pour hazy") {
    CHECK(clarity_with([&](ClarityInputs& beer) {
              beer.grain_haze = 110.0 * gram_per_liter;
              beer.flocculation = Flocculation::low;
          }) <= 2.5);
    CHECK(clarity_with([&](ClarityInputs& beer) {
              beer.grain_haze = 60.0 * gram_per_liter;
              beer.dry_hops = 12.0 * gram_per_liter;
              beer.haze_positive = true;
          }) <= 2.0);
}

TEST_CASE("what clouds never clears, what clears never clouds") {
    double by_grain = 5.0;
    double by_hops = 5.0;
    double by_cold = 0.0;
    for (double amount = 0.0; amount <= 200.0; amount += 4.0) {
        const double grain =
            clarity_with([&](ClarityInputs& beer) { beer.grain_haze = amount * gram_per_liter; });
        const double hops = clarity_with([&](ClarityInputs& beer) {
            beer.dry_hops = amount * gram_per_liter;
            beer.haze_positive = true;
        });
        const double cold = clarity_with([&](ClarityInputs& beer) {
            beer.grain_haze = 100.0 * gram_per_liter;
            beer.cold_weeks = amount;
        });
        CHECK(grain <= by_grain);
        CHECK(hops <= by_hops);
        CHECK(cold >= by_cold);
        CHECK(grain >= 0.0);
        CHECK(hops >= 0.0);
        CHECK(cold <= 5.0);
        by_grain = grain;
        by_hops = hops;
        by_cold = cold;
    }
    CHECK(clarity_with([&](ClarityInputs& beer) { beer.flocculation = Flocculation::low; }) <
          plain_clarity());
    CHECK(clarity_with([&](ClarityInputs& beer) { beer.flocculation = Flocculation::high; }) >
          plain_clarity());
}

// Burns, on haze-positive yeast, 2023: neutral yeasts do not keep dry-hop haze up.
TEST_CASE("yeast decides whether dry hops stay cloudy") {
    CHECK(clarity_with([&](ClarityInputs& beer) {
              beer.dry_hops = 8.0 * gram_per_liter;
              beer.haze_positive = true;
          }) < clarity_with([&](ClarityInputs& beer) { beer.dry_hops = 8.0 * gram_per_liter; }) - 1.0);
    CHECK(clarity_with([&](ClarityInputs& beer) { beer.haze_positive = true; }) == plain_clarity());
}

// Common practice: cask ale at 1.2 volumes has a low head, wheat beer at 3.5 a very large one.
TEST_CASE("gas and wheat raise the head") {
    const auto size_at = [](double volumes, double grain = 0.0) {
        return head_size_level(volumes * volume_of_co2, grain * gram_per_liter);
    };
    CHECK(within(size_at(1.2), 2.0, 0.75));
    CHECK(within(size_at(2.4), 4.0, 0.75));
    CHECK(size_at(3.5, 100.0) > 6.0);
    double before = 0.0;
    for (double volumes = 0.0; volumes <= 6.0; volumes += 0.1) {
        CHECK(size_at(volumes) >= before);
        CHECK(size_at(volumes, 500.0) <= 7.0);
        before = size_at(volumes);
    }
}

// Bamforth, Journal of the Institute of Brewing 110, 2004; Ferreira et al., Journal of Agricultural and Food
// Chemistry 53, 2005: protein, iso-alpha-acids and gas hold foam up; alcohol, adjuncts and acid break it.
TEST_CASE("protein, hops and gas hold the head, alcohol, adjuncts and acid break it") {
    CHECK(within(usual_retention(), 4.5, 0.75));
    CHECK(retention_at(80.0, 30.0, 5.0, 0.0, 2.4, 0.0) > usual_retention());
    CHECK(retention_at(0.0, 60.0, 5.0, 0.0, 2.4, 0.0) >= usual_retention());
    CHECK(retention_at(0.0, 5.0, 5.0, 0.0, 2.4, 0.0) < usual_retention());
    CHECK(retention_at(0.0, 30.0, 5.0, 0.0, 3.0, 0.0) > usual_retention());
    CHECK(retention_at(0.0, 30.0, 10.0, 0.0, 2.4, 0.0) < usual_retention());
    CHECK(retention_at(0.0, 30.0, 5.0, 0.3, 2.4, 0.0) < usual_retention());
    CHECK(retention_at(0.0, 30.0, 5.0, 0.0, 2.4, 5.0) < usual_retention());
    CHECK(retention_at(0.0, 0.0, 20.0, 1.0, 0.0, 7.0) >= 0.0);
    CHECK(retention_at(500.0, 120.0, 0.0, 0.0, 6.0, 0.0) <= 7.0);
}

// Common practice: dry hops cloud from some grams a liter on. How much they do is a working value.
TEST_CASE("each gram of dry hops beyond four takes an eighth of a step, up to a whole one") {
    const auto clarity_of = [](double grams) {
        return clarity_with([&](ClarityInputs& beer) { beer.dry_hops = grams * gram_per_liter; });
    };
    CHECK(clarity_of(4.0) == plain_clarity());
    CHECK(within(clarity_of(4.0) - clarity_of(8.0), 0.5, 0.05));
    CHECK(within(clarity_of(4.0) - clarity_of(30.0), 1.0, 0.1));
}
