#include "report/picture_number.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>
#include <utility>

#include "base/number.hpp"
#include "report/drawing.hpp"

namespace entrywise {

namespace {

constexpr double number_height = 40.0;
constexpr double ground = 38.0;
constexpr double crest = 5.0;
constexpr double number_left = 1.0;
constexpr double number_right = 99.0;

/// The span that a picture shows: the whole of the range with half of it at either side, and all that the
/// beer may be.
Axis axis_for(double lowest, double highest, const std::optional<PlainRange>& range) {
    double low = lowest;
    double high = highest;
    if (range) {
        const double from = range->low.value_or(std::min(lowest, *range->high));
        const double to = range->high.value_or(std::max(highest, *range->low));
        const double margin = (to - from) * 0.4;
        low = std::min(low, from - margin);
        high = std::max(high, to + margin);
    }
    const double room = std::max((high - low) * 0.04, 1e-6);
    return {low - room, high + room, number_left, number_right};
}

void draw_range(Drawing& drawing, const Axis& axis, const std::optional<PlainRange>& range, double bottom) {
    if (!range) {
        return;
    }
    const double from = axis.at(range->low.value_or(axis.low()));
    const double to = axis.at(range->high.value_or(axis.high()));
    drawing.rectangle("band", {from, 0.0}, to - from, bottom);
    if (range->low) {
        drawing.line("post", {from, 0.0}, {from, bottom});
    }
    if (range->high) {
        drawing.line("post", {to, 0.0}, {to, bottom});
    }
}

double root_of_mean_square(const std::vector<double>& draws) {
    double mean = 0.0;
    for (const double draw : draws) {
        mean += draw / static_cast<double>(draws.size());
    }
    double square = 0.0;
    for (const double draw : draws) {
        square += (draw - mean) * (draw - mean) / static_cast<double>(draws.size());
    }
    return std::sqrt(square);
}

/// How dense the draws lie, by a normal kernel. Width of the kernel: Silverman, Density estimation for
/// statistics and data analysis, 1986, equation 3.28.
class Density {
  public:
    explicit Density(std::vector<double> draws)
        : draws_(std::move(draws)),
          width_(1.06 * root_of_mean_square(draws_) * std::pow(static_cast<double>(draws_.size()), -0.2)) {
        std::sort(draws_.begin(), draws_.end());
    }

    bool is_spread() const { return width_ > 0.0; }
    double width() const { return width_; }
    double at(double value) const {
        const auto first = std::lower_bound(draws_.begin(), draws_.end(), value - reach * width_);
        const auto last = std::upper_bound(first, draws_.end(), value + reach * width_);
        return std::accumulate(first, last, 0.0, [&](double sum, double draw) {
            const double distance = (value - draw) / width_;
            return sum + std::exp(-0.5 * distance * distance);
        });
    }

  private:
    /// In widths of the kernel: what lies farther away adds less than a ten-thousandth of a draw, far less
    /// than a line is wide (working value).
    static constexpr double reach = 4.5;

    std::vector<double> draws_;
    double width_;
};

/// The outline of the distribution between two values.
std::vector<Point> outline(const Density& density, const Axis& axis, double from, double to, double peak) {
    constexpr int steps = 48;
    std::vector<Point> points;
    for (int step = 0; step <= steps; ++step) {
        const double value = from + (to - from) * step / steps;
        points.push_back({axis.at(value), ground - (ground - crest) * density.at(value) / peak});
    }
    return points;
}

double peak_of(const Density& density, double from, double to) {
    constexpr int steps = 200;
    double peak = 0.0;
    for (int step = 0; step <= steps; ++step) {
        peak = std::max(peak, density.at(from + (to - from) * step / steps));
    }
    return peak;
}

void draw_part(Drawing& drawing, const char* name, const Density& density, const Axis& axis, double from,
               double to, double peak) {
    if (to <= from) {
        return;
    }
    std::vector<Point> points = outline(density, axis, from, to, peak);
    points.insert(points.begin(), {points.front().x, ground});
    points.push_back({points.back().x, ground});
    drawing.area(name, points);
}

std::string range_in_words(const std::optional<PlainRange>& range, int decimals) {
    if (!range) {
        return "the guide prints no range";
    }
    if (range->low && range->high) {
        return fmt::format("the style runs from {} to {}", fixed(*range->low, decimals),
                           fixed(*range->high, decimals));
    }
    return range->low ? fmt::format("the style asks for {} or more", fixed(*range->low, decimals))
                      : fmt::format("the style asks for {} or less", fixed(*range->high, decimals));
}

std::string estimate_in_words(const BeerNumber& number) {
    return fmt::format("most likely {}, eight in ten from {} to {}",
                       fixed(number.value.median, number.decimals), fixed(number.value.low, number.decimals),
                       fixed(number.value.high, number.decimals));
}

}  // namespace

std::string number_picture(const BeerNumber& number, const std::vector<double>& draws,
                           const std::optional<PlainRange>& range) {
    const Density density(draws);
    const auto [lowest, highest] = std::minmax_element(draws.begin(), draws.end());
    // The last hundredth at either end would draw a thin line far out.
    const double tail = density.width();
    const double from =
        std::max(*lowest, number.value.low - 2.0 * (number.value.median - number.value.low)) - tail;
    const double to =
        std::min(*highest, number.value.high + 2.0 * (number.value.high - number.value.median)) + tail;
    const Axis axis = axis_for(from, to, range);
    Drawing drawing = Drawing::stretched(
        "number", number_height,
        {fmt::format("{} over the style's range", number.name),
         fmt::format("{}; {}.", estimate_in_words(number), range_in_words(range, number.decimals))});
    draw_range(drawing, axis, range, ground);
    if (density.is_spread()) {
        const double peak = peak_of(density, from, to);
        const double inside_from = std::clamp(range && range->low ? *range->low : from, from, to);
        const double inside_to = std::clamp(range && range->high ? *range->high : to, from, to);
        draw_part(drawing, "outside", density, axis, from, inside_from, peak);
        draw_part(drawing, "inside", density, axis, inside_from, inside_to, peak);
        draw_part(drawing, "outside", density, axis, inside_to, to, peak);
    }
    drawing.line("ground", {0.0, ground}, {100.0, ground});
    const double middle = axis.at(number.value.median);
    drawing.line("middle", {middle, 1.0}, {middle, number_height});
    return drawing.svg();
}

std::string change_picture(const BeerNumber& before, const BeerNumber& after,
                           const std::optional<PlainRange>& range) {
    constexpr double low_height = 18.0;
    constexpr double center = low_height / 2.0;
    const Axis axis = axis_for(std::min(before.value.low, after.value.low),
                               std::max(before.value.high, after.value.high), range);
    Drawing drawing = Drawing::stretched(
        "change", low_height,
        {fmt::format("{} before and after", before.name),
         fmt::format("from {} to {}; {}.", fixed(before.value.median, before.decimals),
                     fixed(after.value.median, after.decimals), range_in_words(range, before.decimals))});
    draw_range(drawing, axis, range, low_height);
    drawing.line("was", {axis.at(before.value.low), 4.5}, {axis.at(before.value.high), 4.5});
    drawing.line("was-middle", {axis.at(before.value.median), 1.0},
                 {axis.at(before.value.median), center - 1.0});
    drawing.line("is", {axis.at(after.value.low), 13.5}, {axis.at(after.value.high), 13.5});
    drawing.line("middle", {axis.at(after.value.median), center}, {axis.at(after.value.median), low_height});
    return drawing.svg();
}

}  // namespace entrywise
