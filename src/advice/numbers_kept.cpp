#include "advice/numbers_kept.hpp"

#include <algorithm>
#include <optional>

namespace entrywise {

namespace {

template <class Quantity>
double widths_outside(const std::optional<Range<Quantity>>& range, const Estimate<Quantity>& estimate) {
    if (!range || !range->low || !range->high) {
        return 0.0;
    }
    const Quantity number = estimate.median();
    const Quantity width = *range->high - *range->low;
    const Quantity outside = std::max({number - *range->high, *range->low - number, 0.0 * number});
    return width > 0.0 * width ? in(outside, width) : 0.0;
}

}  // namespace

double numbers_outside(const Style& style, const Beer& beer) {
    const auto& ranges = style.ranges;
    return widths_outside(ranges.original_gravity, beer.original_gravity.total) +
           widths_outside(ranges.final_gravity, beer.final_gravity) +
           widths_outside(ranges.alcohol, beer.alcohol) +
           widths_outside(ranges.bitterness, beer.tasted_bitterness) +
           widths_outside(ranges.color, beer.color.total);
}

bool numbers_are_kept(const Style& style, const Beer& before, const Beer& after) {
    constexpr double let_pass = 0.05;
    return numbers_outside(style, after) - numbers_outside(style, before) <= let_pass;
}

}  // namespace entrywise
