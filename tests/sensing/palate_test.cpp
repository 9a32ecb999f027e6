#include "sensing/palate.hpp"

#include <doctest/doctest.h>

#include "tests/support/palate.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double body_at(double real_extract, double alcohol = 5.0, double grain = 0.0, double volumes = 2.4,
               bool nitrogen = false) {
    return body_level(usual_palate().body, {.real_extract = real_extract * plato,
                                            .alcohol = alcohol * percent_by_volume,
                                            .grain_body = grain * gram_per_liter,
                                            .carbonation = volumes * volume_of_co2,
                                            .nitrogen = nitrogen});
}

double body_of_richness(double richness) {
    return body_level(usual_palate().body, {.real_extract = 4.5 * plato,
                                            .alcohol = 5.0 * percent_by_volume,
                                            .malt_richness = richness,
                                            .grain_body = 0.0 * gram_per_liter,
                                            .carbonation = 2.4 * volume_of_co2});
}

/// What finish depends on, with a plain pale ale's values.
struct Sip {
    double real_extract = 4.8;
    double alcohol = 5.0;
    double lactose = 0.0;
    double ibus = 30.0;
    double volumes = 2.4;
    double sour = 0.0;
};

double finish_of(const Sip& sip) {
    return finish_level(usual_palate().finish, {.real_extract = sip.real_extract * plato,
                                                .alcohol = sip.alcohol * percent_by_volume,
                                                .bitterness = sip.ibus * ibu,
                                                .carbonation = sip.volumes * volume_of_co2,
                                                .lactose = sip.lactose * gram_per_liter,
                                                .sour = sip.sour});
}

double carbonation_at(double volumes) {
    return carbonation_level(volumes * volume_of_co2);
}

double warmth_at(double alcohol) {
    return alcohol_level(usual_palate().warmth, alcohol * percent_by_volume);
}

double alcohol_at(double alcohol) {
    return alcohol_level(usual_palate().alcohol_flavor, alcohol * percent_by_volume);
}

double creaminess_at(double body, double grain = 0.0, double lactose = 0.0, double volumes = 2.2,
                     bool nitrogen = false) {
    return creaminess_level(body, grain * gram_per_liter, lactose * gram_per_liter, volumes * volume_of_co2,
                            nitrogen);
}

double astringency_at(double roast, double dry_hops) {
    return astringency_level(roast * gram_per_liter, dry_hops * gram_per_liter);
}

/// Checks that a level rises, or at least does not fall, and stays on its scale.
template <class Level>
void check_rises(Level level, double from, double to, double step, double highest) {
    double before = level(from);
    for (double at = from; at <= to; at += step) {
        CAPTURE(at);
        CHECK(level(at) >= before - 1e-12);
        CHECK(level(at) >= 0.0);
        CHECK(level(at) <= highest);
        before = level(at);
    }
}

}  // namespace

// Beer Judge Certification Program, Beer Style Guidelines, 2021, numbers at mid-range and words: American
// light lager (2.2 °P real extract) very light, American pale ale (5.0) medium-light to medium, doppelbock
// (8.4) medium-full to full, imperial stout (9.3) full.
TEST_CASE("body has its usual words by real extract, within a step") {
    CHECK(within(body_at(2.2, 3.5, 0.0, 2.6), 1.0, 1.0));
    CHECK(within(body_at(5.0, 5.3), 3.5, 1.0));
    CHECK(within(body_at(8.4, 8.5), 5.5, 1.0));
    CHECK(within(body_at(9.3, 10.0), 6.0, 1.0));
}

TEST_CASE("more extract, body grain or nitrogen never make a thinner body") {
    check_rises([](double extract) { return body_at(extract); }, -1.0, 16.0, 0.25, 7.0);
    check_rises([](double grain) { return body_at(4.5, 5.0, grain); }, 0.0, 120.0, 5.0, 7.0);
    CHECK(body_at(4.5, 5.0, 0.0, 2.4, true) > body_at(4.5));
}

// Working value: however much of it there is, grain adds a step at most.
TEST_CASE("much oats add a step of body and no more") {
    CHECK(within(body_at(4.5, 5.0, 200.0) - body_at(4.5), 1.0, 0.05));
    CHECK(within(body_at(4.5, 5.0, 200.0), body_at(4.5, 5.0, 400.0), 1e-9));
}

// Common practice: of two beers of one gravity the one of Munich malt is felt the fuller, by about half a
// step, the one of much maize or sugar the thinner. Roast on top of dark malts adds no more of it.
TEST_CASE("rich malts make a fuller beer, up to the darkest kilned ones") {
    check_rises(body_of_richness, 0.0, 4.0, 0.1, 7.0);
    CHECK(within(body_of_richness(2.0) - body_of_richness(1.0), 0.5, 0.25));
    CHECK(body_of_richness(0.6) < body_of_richness(1.0) - 0.1);
    CHECK(within(body_of_richness(3.0), body_of_richness(2.0), 1e-9));
}

// Working value: the fine bubbles of nitrogen are worth half a step.
TEST_CASE("nitrogen makes a beer of the same gas half a step fuller") {
    CHECK(within(body_at(4.5, 5.0, 0.0, 2.4, true) - body_at(4.5, 5.0, 0.0, 2.4), 0.5, 0.05));
}

// Langstaff, Guinard and Lewis, 1991: carbonation and fullness are opposite ends of mouthfeel.
TEST_CASE("lively carbonation thins the body") {
    check_rises([](double flat) { return body_at(4.5, 5.0, 0.0, 4.5 - flat); }, 0.0, 4.0, 0.25, 7.0);
    CHECK(body_at(4.5, 5.0, 0.0, 3.6) < body_at(4.5, 5.0, 0.0, 2.4) - 0.3);
}

// Pangborn, Lewis and Yamashita, Journal of the Institute of Brewing 89, 1983; Clark et al., Chemosensory
// Perception 4, 2011: sugar sweetens; bitterness, gas and acid dry. Common practice: of two beers of the same
// real extract the stronger one is the more attenuated and ends drier.
TEST_CASE("extract and lactose sweeten; bitterness, gas, acid and attenuation dry") {
    const double usual = finish_of({});
    CHECK(finish_of({.real_extract = 5.8}) > usual + 0.3);
    CHECK(finish_of({.real_extract = 3.8}) < usual - 0.3);
    CHECK(finish_of({.lactose = 20.0}) > usual + 0.3);
    CHECK(finish_of({.alcohol = 8.0}) < usual);
    CHECK(finish_of({.ibus = 60.0}) < usual);
    CHECK(finish_of({.volumes = 3.5}) < usual - 0.3);
    CHECK(finish_of({.sour = 4.0}) < usual);
    CHECK(finish_of({.real_extract = 30.0}) <= 6.0);
    CHECK(finish_of({.real_extract = -2.0, .ibus = 100.0}) >= 0.0);
}

TEST_CASE("sweetness rises with the finish and stays on its scale") {
    check_rises([](double finish) { return sweetness_level(usual_palate().sweetness, finish); }, 0.0, 6.0,
                0.1, 7.0);
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021: a saison finishes very dry, an American IPA
// dry to medium-dry, a sweet stout medium-dry to sweet.
TEST_CASE("typical beers finish as guides say, within a step") {
    CHECK(within(finish_of({.real_extract = 3.1, .alcohol = 6.0, .ibus = 28.0, .volumes = 3.4}), 0.0, 1.0));
    CHECK(within(finish_of({.real_extract = 5.1, .alcohol = 6.5, .ibus = 55.0, .volumes = 2.5}), 1.5, 1.0));
    const double milk_stout =
        finish_of({.real_extract = 6.6, .alcohol = 5.0, .lactose = 20.0, .ibus = 28.0, .volumes = 2.1});
    CHECK(milk_stout >= 2.5);
    CHECK(milk_stout <= 6.0);
}

// Common practice of priming tables: cask ale 1.0 to 1.5, bottled British ale about 2, American ale
// about 2.5, wheat beer 3.3 and more.
TEST_CASE("carbonation has its usual words by volumes, within half a step") {
    CHECK(within(carbonation_at(1.1), 1.0, 0.5));
    CHECK(within(carbonation_at(1.55), 2.0, 0.5));
    CHECK(within(carbonation_at(2.0), 3.0, 0.5));
    CHECK(within(carbonation_at(2.4), 4.0, 0.5));
    CHECK(within(carbonation_at(2.75), 5.0, 0.5));
    CHECK(within(carbonation_at(3.2), 6.0, 0.5));
    CHECK(within(carbonation_at(3.9), 7.0, 0.5));
    CHECK(carbonation_at(0.0) == 0.0);
    check_rises(carbonation_at, 0.0, 8.0, 0.05, 7.0);
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021: none in beers of up to 5 %, low or so at 6.5
// to 7.5 %, medium-low or so about 9 %, medium-high in barley wine of 11 %.
TEST_CASE("warmth has its usual words by alcohol, within a step") {
    CHECK(warmth_at(4.0) == 0.0);
    CHECK(warmth_at(5.0) <= 0.5);
    CHECK(within(warmth_at(7.0), 2.0, 1.0));
    CHECK(within(warmth_at(9.0), 3.0, 1.0));
    CHECK(within(warmth_at(11.0), 5.0, 1.0));
    check_rises(warmth_at, 0.0, 20.0, 0.1, 7.0);
}

TEST_CASE("alcohol is tasted in strong beer alone, and never less for more of it") {
    CHECK(alcohol_at(4.5) == 0.0);
    CHECK(alcohol_at(10.0) >= 3.0);
    check_rises(alcohol_at, 0.0, 20.0, 0.1, 7.0);
}

TEST_CASE("body, oats, lactose and nitrogen make creamy, gas does not") {
    check_rises([](double body) { return creaminess_at(body); }, 0.0, 7.0, 0.5, 7.0);
    check_rises([](double grain) { return creaminess_at(4.0, grain); }, 0.0, 120.0, 5.0, 7.0);
    check_rises([](double lactose) { return creaminess_at(4.0, 0.0, lactose); }, 0.0, 120.0, 5.0, 7.0);
    check_rises([](double flat) { return creaminess_at(5.0, 30.0, 0.0, 4.0 - flat); }, 0.0, 3.0, 0.25, 7.0);
    CHECK(creaminess_at(4.0, 0.0, 0.0, 1.4, true) > creaminess_at(4.0, 0.0, 0.0, 1.4) + 1.0);
    CHECK(creaminess_at(1.0) == 0.0);
    // Beer Judge Certification Program, Beer Style Guidelines, 2021: Vienna lager, of medium-light to medium
    // body, is a low smoothness; oatmeal stout, of medium-full body, medium to high.
    CHECK(within(creaminess_at(3.5), 1.5, 1.0));
    CHECK(within(creaminess_at(5.5, 40.0), 4.5, 1.0));
}

// Common practice: grassy and astringent beyond some 8 g/L of dry hops; acrid beyond some 12 % of black malt.
TEST_CASE("only much roast or much dry hop turns astringent") {
    CHECK(astringency_at(0.0, 0.0) == 0.0);
    CHECK(astringency_at(10.0, 8.0) == 0.0);
    CHECK(astringency_at(10.0, 10.0) > 0.0);
    CHECK(astringency_at(0.0, 16.0) >= 1.0);
    CHECK(astringency_at(40.0, 0.0) >= 1.0);
    check_rises([](double roast) { return astringency_at(roast, 5.0); }, 0.0, 300.0, 5.0, 7.0);
    check_rises([](double hops) { return astringency_at(5.0, hops); }, 0.0, 100.0, 2.0, 7.0);
}

TEST_CASE("water has no body, and treacle is off the end of the scale") {
    CHECK(body_at(-1.0, 12.0, 0.0, 4.5) == 0.0);
    CHECK(body_at(40.0) == 7.0);
}
