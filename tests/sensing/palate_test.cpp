#include "sensing/palate.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/sensing/guide_words.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double body_at(double real_extract, double alcohol = 5.0, double grain = 0.0, double volumes = 2.4,
               bool nitrogen = false) {
    return body_level(real_extract * plato, alcohol * percent_by_volume, grain * gram_per_liter,
                      volumes * volume_of_co2, nitrogen);
}

/// What the sweetness index depends on, with a plain pale ale's values.
struct Sip {
    double real_extract = 4.8;
    double alcohol = 5.0;
    double caramel = 0.0;
    double lactose = 0.0;
    double ibus = 30.0;
    double volumes = 2.4;
    double sour = 0.0;
};

double index_of(const Sip& sip) {
    return sweetness_index(sip.real_extract * plato, sip.alcohol * percent_by_volume,
                           sip.caramel * gram_per_liter, sip.lactose * gram_per_liter, sip.ibus * ibu,
                           sip.volumes * volume_of_co2, sip.sour);
}

double carbonation_at(double volumes) {
    return carbonation_level(volumes * volume_of_co2);
}

double warmth_at(double alcohol, double real_extract = 4.5) {
    return warmth_level(alcohol * percent_by_volume, real_extract * plato);
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

TEST_CASE("the middle of a guide's numbers has the body of its words") {
    double squares = 0.0;
    for (const GuideWords& style : guide_words) {
        const double level = body_level(style.real_extract(), style.alcohol(), 0.0 * gram_per_liter,
                                        2.5 * volume_of_co2, false);
        const double outside = steps_outside(level, style.body_low, style.body_high);
        CAPTURE(style.code);
        CAPTURE(level);
        CHECK(outside <= 1.0);
        squares += outside * outside;
    }
    // The stated standard error is three quarters of a step.
    CHECK(std::sqrt(squares / static_cast<double>(guide_words.size())) < 0.75);
}

// Common practice: real extract of a light lager about 2 °P, a pale ale about 5, a doppelbock about 7, an
// imperial stout above 8.
TEST_CASE("body has its usual words by real extract") {
    CHECK(within(body_at(2.1), 1.0, 0.5));
    CHECK(within(body_at(4.8), 4.0, 0.5));
    CHECK(within(body_at(7.1, 8.0), 5.5, 0.6));
    CHECK(within(body_at(8.8, 9.0), 6.5, 0.6));
}

TEST_CASE("more extract, body grain or nitrogen never make a thinner body") {
    check_rises([](double extract) { return body_at(extract); }, -1.0, 16.0, 0.25, 7.0);
    check_rises([](double grain) { return body_at(4.5, 5.0, grain); }, 0.0, 120.0, 5.0, 7.0);
    CHECK(body_at(4.5, 5.0, 0.0, 2.4, true) > body_at(4.5));
}

// Langstaff, Guinard and Lewis, 1991: carbonation and fullness are opposite ends of mouthfeel.
TEST_CASE("lively carbonation thins the body") {
    check_rises([](double flat) { return body_at(4.5, 5.0, 0.0, 4.5 - flat); }, 0.0, 4.0, 0.25, 7.0);
    CHECK(body_at(4.5, 5.0, 0.0, 3.6) < body_at(4.5, 5.0, 0.0, 2.4) - 0.3);
}

// Pangborn, Lewis and Yamashita, Journal of the Institute of Brewing 89, 1983; Clark et al., Chemosensory
// Perception 4, 2011: sugar and alcohol sweeten; bitterness, gas and acid dry.
TEST_CASE("extract, alcohol, caramel and lactose sweeten; bitterness, gas and acid dry") {
    const double usual = index_of({});
    CHECK(index_of({.real_extract = 5.8}) > usual);
    CHECK(index_of({.real_extract = 3.8}) < usual);
    CHECK(index_of({.alcohol = 8.0}) > usual);
    CHECK(index_of({.caramel = 20.0}) > usual);
    CHECK(index_of({.lactose = 20.0}) > usual);
    CHECK(index_of({.ibus = 60.0}) < usual);
    CHECK(index_of({.volumes = 3.5}) < usual);
    CHECK(index_of({.sour = 4.0}) < usual);
}

TEST_CASE("finish and sweetness rise with the index and stay on their scales") {
    check_rises(finish_level, -10.0, 20.0, 0.1, 6.0);
    check_rises(sweetness_level, -10.0, 20.0, 0.1, 7.0);
}

// Beer Judge Certification Program, Beer Style Guidelines, 2021: a saison finishes very dry, an American IPA
// dry to medium-dry, a sweet stout medium-dry to sweet.
TEST_CASE("typical beers finish as guides say, within a step") {
    const double saison =
        finish_level(index_of({.real_extract = 3.1, .alcohol = 6.0, .ibus = 28.0, .volumes = 3.4}));
    const double india_pale_ale = finish_level(
        index_of({.real_extract = 5.1, .alcohol = 6.5, .caramel = 5.0, .ibus = 55.0, .volumes = 2.5}));
    const double milk_stout = finish_level(index_of({.real_extract = 6.6,
                                                     .alcohol = 5.0,
                                                     .caramel = 20.0,
                                                     .lactose = 20.0,
                                                     .ibus = 28.0,
                                                     .volumes = 2.1}));
    CHECK(within(saison, 0.0, 1.0));
    CHECK(within(india_pale_ale, 1.5, 1.0));
    CHECK(milk_stout >= 3.5);
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
// to 7.5 %, a medium warmth about 9 %, high in barley wine of 12 %.
TEST_CASE("warmth has its usual words by alcohol, within a step") {
    CHECK(warmth_at(4.0) == 0.0);
    CHECK(warmth_at(5.0) <= 0.5);
    CHECK(within(warmth_at(7.0), 2.0, 1.0));
    CHECK(within(warmth_at(9.0), 4.0, 1.0));
    CHECK(within(warmth_at(12.0), 6.0, 1.0));
    check_rises([](double alcohol) { return warmth_at(alcohol); }, 0.0, 20.0, 0.1, 7.0);
    check_rises([](double thin) { return warmth_at(9.0, 12.0 - thin); }, 0.0, 12.0, 0.5, 7.0);
}

TEST_CASE("alcohol is tasted later than it warms, and never less for more of it") {
    CHECK(alcohol_level(5.0 * percent_by_volume) == 0.0);
    check_rises([](double alcohol) { return alcohol_level(alcohol * percent_by_volume); }, 0.0, 20.0, 0.1,
                7.0);
    for (double alcohol = 5.0; alcohol <= 15.0; alcohol += 0.5) {
        CHECK(alcohol_level(alcohol * percent_by_volume) <= warmth_at(alcohol));
    }
}

TEST_CASE("body, oats, lactose and nitrogen make creamy, gas does not") {
    check_rises([](double body) { return creaminess_at(body); }, 0.0, 7.0, 0.5, 7.0);
    check_rises([](double grain) { return creaminess_at(4.0, grain); }, 0.0, 120.0, 5.0, 7.0);
    check_rises([](double lactose) { return creaminess_at(4.0, 0.0, lactose); }, 0.0, 120.0, 5.0, 7.0);
    check_rises([](double flat) { return creaminess_at(5.0, 30.0, 0.0, 4.0 - flat); }, 0.0, 3.0, 0.25, 7.0);
    CHECK(creaminess_at(4.0, 0.0, 0.0, 1.4, true) > creaminess_at(4.0, 0.0, 0.0, 1.4) + 1.0);
    CHECK(creaminess_at(2.0) == 0.0);
}

// Common practice: grassy and astringent beyond some 8 g/L of dry hops; acrid beyond some 12 % of black malt.
TEST_CASE("only much roast or much dry hop turns astringent") {
    CHECK(astringency_at(0.0, 0.0) == 0.0);
    CHECK(astringency_at(10.0, 4.0) == 0.0);
    CHECK(astringency_at(0.0, 16.0) >= 1.0);
    CHECK(astringency_at(40.0, 0.0) >= 1.0);
    check_rises([](double roast) { return astringency_at(roast, 5.0); }, 0.0, 300.0, 5.0, 7.0);
    check_rises([](double hops) { return astringency_at(5.0, hops); }, 0.0, 100.0, 2.0, 7.0);
}
