#include "advice/nearby_styles.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace entrywise {

namespace {

/// How far a value lies from a range, and how far from its middle.
struct Distance {
    double outside = 0.0;
    double from_middle = 0.0;

    friend auto operator<=>(const Distance&, const Distance&) = default;
};

Distance distance_from(double value, double low, double high) {
    return {std::max({0.0, low - value, value - high}), std::abs(value - (low + high) / 2.0)};
}

/// A quarter more bitterness is one step, wherever it starts.
double bitterness_steps(Bitterness bitterness) {
    constexpr Bitterness hardly_any = 1.0 * ibu;
    return std::log(std::max(bitterness, hardly_any) / ibu) / std::log(1.25);
}

template <class Quantity>
bool is_closed(const std::optional<Range<Quantity>>& range) {
    return range && range->low && range->high;
}

Distance distance_from(const Style& style, const Beer& beer) {
    const Distance strength = distance_from(in(beer.alcohol.median(), percent_by_volume),
                                            in(*style.ranges.alcohol->low, percent_by_volume),
                                            in(*style.ranges.alcohol->high, percent_by_volume));
    const Distance bitterness = distance_from(bitterness_steps(beer.bitterness.total.median()),
                                              bitterness_steps(*style.ranges.bitterness->low),
                                              bitterness_steps(*style.ranges.bitterness->high));
    return {std::hypot(strength.outside, bitterness.outside),
            std::hypot(strength.from_middle, bitterness.from_middle)};
}

}  // namespace

std::vector<Style> nearby_styles(const Beer& beer, const std::vector<Style>& styles, const Style& entered,
                                 std::size_t at_most) {
    std::vector<std::pair<Distance, const Style*>> places;
    for (const Style& style : styles) {
        if (style.code != entered.code && is_closed(style.ranges.alcohol) &&
            is_closed(style.ranges.bitterness)) {
            places.emplace_back(distance_from(style, beer), &style);
        }
    }
    std::stable_sort(places.begin(), places.end(),
                     [](const auto& left, const auto& right) { return left.first < right.first; });
    std::vector<Style> nearby;
    for (std::size_t index = 0; index < std::min(at_most, places.size()); ++index) {
        nearby.push_back(*places[index].second);
    }
    return nearby;
}

}  // namespace entrywise
