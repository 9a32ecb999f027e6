#include "judging/contrast.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "tests/support/guide.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

Style style_of_bitterness(double low, double high) {
    Style style;
    style.expected[Attribute::flavor_bitterness] = Expectation{low, high, false};
    return style;
}

Contrast only_contrast(const Style& first, const Style& second) {
    const auto contrasts = contrasts_between(first, second);
    REQUIRE(contrasts.size() == 1);
    return contrasts.front();
}

Style style_of_color(std::optional<double> low, std::optional<double> high, bool below_high = false) {
    Style style;
    Range<Color> range{.low = {}, .high = {}, .below_high = below_high};
    if (low) {
        range.low = *low * srm;
    }
    if (high) {
        range.high = *high * srm;
    }
    style.ranges.color = range;
    return style;
}

const Contrast* found(const std::vector<Contrast>& contrasts, const Trait& trait) {
    const auto contrast = std::find_if(contrasts.begin(), contrasts.end(),
                                       [&](const Contrast& each) { return each.trait == trait; });
    return contrast == contrasts.end() ? nullptr : &*contrast;
}

/// Whether the second style has more of it, as the guide says in comparing the two.
bool has_more(const std::string& first, const std::string& second, const Trait& trait) {
    const auto contrasts = contrasts_between(guide_style(first), guide_style(second));
    const Contrast* contrast = found(contrasts, trait);
    return contrast != nullptr && contrast->steps > 0.0 && contrast->second_is_higher;
}

}  // namespace

TEST_CASE("equal words are not apart, and words that exclude each other are as far apart as they lie") {
    const Contrast same = only_contrast(style_of_bitterness(2, 4), style_of_bitterness(2, 4));
    CHECK(same.steps == 0.0);
    CHECK(same.gap == 0.0);
    CHECK(same.overlap == 1.0);
    CHECK(same.meets);
    const Contrast far = only_contrast(style_of_bitterness(1, 1), style_of_bitterness(5, 5));
    // From any place in the step around 1 to the step around 5, which begins three whole steps above it:
    // 3 at the least, 4 at the most.
    CHECK(within(far.steps, 3.5, 1e-9));
    CHECK(far.gap == 4.0);
    CHECK(far.overlap == 0.0);
    CHECK_FALSE(far.meets);
    CHECK(far.second_is_higher);
}

TEST_CASE("what separates does not depend on which style comes first") {
    for (const auto& [one, other] :
         {std::pair("21A", "18B"), std::pair("5D", "20C"), std::pair("10A", "23A")}) {
        const auto forth = contrasts_between(guide_style(one), guide_style(other));
        const auto back = contrasts_between(guide_style(other), guide_style(one));
        REQUIRE(forth.size() == back.size());
        for (std::size_t index = 0; index < forth.size(); ++index) {
            CHECK(within(forth[index].steps, back[index].steps, 1e-9));
            CHECK(within(forth[index].overlap, back[index].overlap, 1e-9));
            CHECK(forth[index].meets == back[index].meets);
        }
    }
}

TEST_CASE("pushing one style away sets the two further apart") {
    double before = 0.0;
    for (const double up : {1.0, 2.0, 3.0}) {
        const double steps =
            only_contrast(style_of_bitterness(1, 3), style_of_bitterness(1 + up, 3 + up)).steps;
        CHECK(steps > before);
        before = steps;
    }
}

TEST_CASE("ranges meet at a border that belongs to both, and do not where it belongs to one") {
    CHECK(only_contrast(style_of_color(2.0, 6.0), style_of_color(6.0, 9.0)).meets);
    CHECK_FALSE(only_contrast(style_of_color(2.0, 6.0, true), style_of_color(6.0, 9.0)).meets);
    CHECK_FALSE(only_contrast(style_of_color(2.0, 6.0), style_of_color(7.0, 9.0)).meets);
}

TEST_CASE("an open end reaches as far as the other style does") {
    CHECK(only_contrast(style_of_color(20.0, {}), style_of_color(20.0, 30.0)).steps == 0.0);
    const Contrast apart = only_contrast(style_of_color({}, 5.0), style_of_color(20.0, {}));
    CHECK_FALSE(apart.meets);
    CHECK(apart.steps > 2.0);
}

TEST_CASE("an eye tells no blacks apart") {
    // Beyond about 35 SRM a beer is black and opaque: Beer Judge Certification Program, Beer Style
    // Guidelines, 2021, introduction.
    CHECK(only_contrast(style_of_color(36.0, 40.0), style_of_color(50.0, 60.0)).steps == 0.0);
}

TEST_CASE("the directions are those in which the guide compares its styles") {
    // Beer Judge Certification Program, Beer Style Guidelines, 2021, style comparisons.
    CHECK(has_more("18B", "21A", Number::alcohol));
    CHECK(has_more("18B", "21A", Number::bitterness));
    CHECK(has_more("18B", "21A", Attribute::aroma_hop));
    CHECK(has_more("21A", "22A", Number::alcohol));
    CHECK(has_more("15B", "15C", Number::alcohol));
    CHECK(has_more("11A", "11C", Number::alcohol));
    CHECK(has_more("4A", "5D", Number::bitterness));
    CHECK(has_more("10A", "10B", Number::color));
    CHECK(has_more("13A", "13B", Number::alcohol));
    CHECK(has_more("2A", "2C", Number::color));
}

TEST_CASE("what is one thing on the palate is told once") {
    const auto told = separating(contrasts_between(guide_style("5D"), guide_style("20C")));
    CHECK(found(told, Number::color) != nullptr);
    CHECK(found(told, Number::original_gravity) == nullptr);
    CHECK(
        (found(told, Number::bitterness) == nullptr || found(told, Attribute::flavor_bitterness) == nullptr));
    CHECK((found(told, Number::alcohol) == nullptr || found(told, Attribute::mouthfeel_warmth) == nullptr));
    CHECK(std::is_sorted(told.begin(), told.end(), [](const Contrast& left, const Contrast& right) {
        return left.steps > right.steps;
    }));
}

TEST_CASE("a style has no traits that set it apart from itself") {
    for (const StyleName& name : usual_library().style_names("bjcp-2021")) {
        const Style style = *usual_library().style(name);
        CHECK(separating(contrasts_between(style, style)).empty());
        CHECK(distance_of(contrasts_between(style, style)) == 0.0);
    }
}

TEST_CASE("what has nothing in common with what was told is told besides") {
    Style pale = style_of_bitterness(1, 2);
    pale.ranges.color = Range<Color>{4.0 * srm, 5.0 * srm};
    pale.ranges.bitterness = Range<Bitterness>{10.0 * ibu, 15.0 * ibu};
    Style dark = style_of_bitterness(5, 6);
    dark.ranges.color = Range<Color>{8.0 * srm, 9.0 * srm};
    dark.ranges.bitterness = Range<Bitterness>{60.0 * ibu, 80.0 * ibu};
    const auto told = separating(contrasts_between(pale, dark));
    REQUIRE(told.size() == 2);
    CHECK(told.back().trait == Trait(Number::color));
}

TEST_CASE("styles that share less than a third of what either takes in are told apart, others are not") {
    // Three levels from 1 to 4, of which the other style has so much.
    CHECK(sets_apart(only_contrast(style_of_bitterness(1, 2), style_of_bitterness(3, 5))));
    CHECK_FALSE(sets_apart(only_contrast(style_of_bitterness(1, 4), style_of_bitterness(2, 5))));
    // With half a step around each word both share two of seven steps, and two of six, which is a third.
    CHECK(sets_apart(only_contrast(style_of_bitterness(1, 4), style_of_bitterness(3, 7))));
    CHECK_FALSE(sets_apart(only_contrast(style_of_bitterness(1, 4), style_of_bitterness(3, 6))));
}

TEST_CASE("the style whose words lie higher is the higher one, also where both reach far") {
    CHECK_FALSE(only_contrast(style_of_bitterness(2, 5), style_of_bitterness(1, 4)).second_is_higher);
    CHECK(only_contrast(style_of_bitterness(1, 4), style_of_bitterness(2, 5)).second_is_higher);
    CHECK_FALSE(only_contrast(style_of_bitterness(2, 4), style_of_bitterness(2, 4)).second_is_higher);
}

TEST_CASE("styles are as far apart as their traits in the mean, none at all without traits") {
    Style one = style_of_bitterness(1, 1);
    Style other = style_of_bitterness(5, 5);
    const double by_bitterness = distance_of(contrasts_between(one, other));
    one.expected[Attribute::flavor_malt] = other.expected[Attribute::flavor_malt] =
        Expectation{3.0, 3.0, false};
    CHECK(within(distance_of(contrasts_between(one, other)), 0.5 * by_bitterness, 1e-9));
    CHECK(distance_of({}) == 0.0);
}
