#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <ostream>
#include <string>
#include <vector>

#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "tests/support/any_recipe.hpp"
#include "tests/support/demo.hpp"

namespace entrywise {

/// How an attribute is told when a property does not hold for it.
inline void showValue(Attribute attribute, std::ostream& out) {
    out << name_of(attribute);
}

}  // namespace entrywise

using namespace entrywise;
using namespace entrywise::testing;

// What must hold of judging, whatever the weights of the sheet. Plain logic: what a style accepts costs
// nothing, and what it accepts besides costs no more than before.

namespace {

std::vector<Tasting> demo_tastings() {
    constexpr std::size_t draws = 64;
    std::vector<Tasting> tastings;
    for (const std::string& name : demo_names()) {
        tastings.push_back(taste(demo(name), usual_palate(), draws));
    }
    return tastings;
}

const Tasting& any_tasting() {
    static const std::vector<Tasting> tastings = demo_tastings();
    return tastings[*rc::gen::inRange<std::size_t>(0, tastings.size())];
}

/// A style that tells of bitterness by its number or by a word. Where it does both and they contradict each
/// other, the one that is further out counts, and the beer is too bitter by the one, not bitter enough by the
/// other; which of these a judge charges is not the matter here.
Style any_style() {
    Style style = all_of_the_guide()[*rc::gen::inRange<std::size_t>(0, all_of_the_guide().size())];
    if (*rc::gen::arbitrary<bool>()) {
        style.ranges.bitterness.reset();
    } else {
        style.expected[Attribute::flavor_bitterness].reset();
    }
    return style;
}

/// The points draw by draw. The habit of the guide in choosing words is that of the style as it is printed.
std::vector<double> points_by_draw(const Tasting& tasting, const Style& style, const Yardstick& printed) {
    Yardstick yardstick = printed;
    yardstick.style = &style;
    return points_at_risk(Impression(tasting.beer, tasting.profile), yardstick, Tariff(usual_score_sheet()))
        .draws();
}

/// The style with one of its expectations wider by up to two steps to either side.
Style widened(Style style) {
    const Attribute attribute = *rc::gen::elementOf(all_attributes());
    auto& expectation = style.expected[attribute];
    RC_PRE(expectation.has_value());
    expectation->low = std::max(0.0, expectation->low - any_between(0.0, 2.0));
    expectation->high += any_between(0.0, 2.0);
    return style;
}

template <class Quantity>
void widen(std::optional<Range<Quantity>>& range, double factor) {
    RC_PRE(range.has_value());
    if (range->low) {
        *range->low /= factor;
    }
    if (range->high) {
        *range->high *= factor;
    }
}

Style with_a_wider_number(Style style) {
    const double factor = any_between(1.0, 1.5);
    switch (*rc::gen::inRange(0, 4)) {
        case 0:
            widen(style.ranges.bitterness, factor);
            break;
        case 1:
            widen(style.ranges.color, factor);
            break;
        case 2:
            widen(style.ranges.alcohol, factor);
            break;
        default:
            widen(style.ranges.final_gravity, factor);
    }
    return style;
}

void must_cost_no_more(const Tasting& tasting, const Style& printed, const Style& wider) {
    const Yardstick yardstick(printed, usual_palate());
    const std::vector<double> before = points_by_draw(tasting, printed, yardstick);
    const std::vector<double> after = points_by_draw(tasting, wider, yardstick);
    for (std::size_t draw = 0; draw < before.size(); ++draw) {
        RC_LOG() << fmt::format("{} as {}: {} points, {} where the style is wider\n", tasting.recipe.name,
                                printed.code, before[draw], after[draw]);
        RC_ASSERT(after[draw] <= before[draw] + 1e-9);
    }
}

}  // namespace

TEST_CASE("a wider range of a level never costs more points") {
    CHECK(holds("wider levels forgive", [] {
        const Style style = any_style();
        must_cost_no_more(any_tasting(), style, widened(style));
    }));
}

TEST_CASE("a wider range of a number never costs more points") {
    CHECK(holds("wider numbers forgive", [] {
        const Style style = any_style();
        must_cost_no_more(any_tasting(), style, with_a_wider_number(style));
    }));
}

// Judge Procedures Manual of the Beer Judge Certification Program: a section loses no more than it holds.
TEST_CASE("no sheet loses more than it holds, and none gains") {
    CHECK(holds("points at risk lie between nothing and everything", [] {
        const Style style = any_style();
        const Tasting& tasting = any_tasting();
        const Sheet sheet = judge(tasting.beer, tasting.profile, style, usual_score_sheet());
        for (const Section section :
             {Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel, Section::overall}) {
            RC_ASSERT(sheet.at_risk[section].low >= 0.0);
            RC_ASSERT(sheet.at_risk[section].high <= usual_score_sheet().points[section] + 1e-9);
        }
    }));
}
