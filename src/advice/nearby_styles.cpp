#include "advice/nearby_styles.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
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

/// A fifth more color is one step.
double color_steps(Color color) {
    constexpr Color palest = 1.0 * srm;
    return std::log(std::max(color, palest) / srm) / std::log(1.2);
}

Distance color_distance(const std::optional<Range<Color>>& range, Color color) {
    constexpr Color darkest = 60.0 * srm;
    return range ? distance_from(color_steps(color), color_steps(range->low.value_or(0.0 * srm)),
                                 color_steps(range->high.value_or(darkest)))
                 : Distance{};
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
    const Distance color = color_distance(style.ranges.color, beer.color.total.median());
    return {std::hypot(strength.outside, bitterness.outside, color.outside),
            std::hypot(strength.from_middle, bitterness.from_middle, color.from_middle)};
}

/// `21B-belgian` is a variant of `21B`, where that is a style itself.
bool is_a_variant(const Style& style, const std::vector<Style>& styles) {
    const auto dash = style.code.find('-');
    return dash != std::string::npos && std::any_of(styles.begin(), styles.end(), [&](const Style& other) {
               return other.code == style.code.substr(0, dash);
           });
}

}  // namespace

std::vector<Style> nearby_styles(const Beer& beer, const std::vector<Style>& styles, const Style& entered,
                                 std::size_t at_most) {
    std::vector<std::pair<Distance, const Style*>> places;
    for (const Style& style : styles) {
        const bool is_placed = is_closed(style.ranges.alcohol) && is_closed(style.ranges.bitterness);
        if (style.code != entered.code && is_placed && !is_a_variant(style, styles)) {
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
