#include "report/picture_plane.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/drawing.hpp"

namespace entrywise {

namespace {

constexpr double width = 340.0;
constexpr double plane_height = 300.0;
constexpr double plane_left = 34.0;
constexpr double plane_right = 324.0;
constexpr double top = 8.0;
constexpr double bottom = 262.0;

double strength_of(AlcoholByVolume alcohol) {
    return in(alcohol, percent_by_volume);
}

double bitterness_of(Bitterness bitterness) {
    return in(bitterness, ibu);
}

struct Ends {
    double low;
    double high;
};

/// A round step that parts a span into four to nine.
double step_for(double span) {
    for (const double step : {0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0}) {
        if (span / step <= 8.0) {
            return step;
        }
    }
    return 100.0;
}

template <class Quantity, class Number>
Ends ends_of(const Range<Quantity>& range, Number number) {
    const double low = range.low ? number(*range.low) : 0.0;
    return {low, range.high ? number(*range.high) : low * 1.5};
}

/// Where the code of a style stands: in the upper left corner of its box, lower where another stands already.
Point place_for_label(Point corner, std::vector<Point>& taken) {
    constexpr double line = 11.0;
    Point place{corner.x + 3.5, corner.y + line};
    const auto is_taken = [&](const Point& other) {
        return std::abs(other.x - place.x) < 30.0 && std::abs(other.y - place.y) < line;
    };
    while (std::any_of(taken.begin(), taken.end(), is_taken) && place.y < bottom - line) {
        place.y += line;
    }
    taken.push_back(place);
    return place;
}

class Plane {
  public:
    Plane(const std::vector<PlacedStyle>& styles, const Beer& beer)
        : strength_(axis_over(
              styles, beer.alcohol.interval(), plane_left, plane_right,
              [](const PlacedStyle& style) { return ends_of(style.alcohol, strength_of); }, strength_of)),
          bitterness_(axis_over(
              styles, beer.bitterness.total.interval(), bottom, top,
              [](const PlacedStyle& style) { return ends_of(style.bitterness, bitterness_of); },
              bitterness_of)) {}

    void draw_axes(Drawing& drawing) const {
        for (double value : marks(strength_)) {
            drawing.line("grid", {strength_.at(value), top}, {strength_.at(value), bottom});
            drawing.label("mark below", {strength_.at(value), bottom + 14.0}, shortest(value));
        }
        for (double value : marks(bitterness_)) {
            drawing.line("grid", {plane_left, bitterness_.at(value)}, {plane_right, bitterness_.at(value)});
            drawing.label("mark beside", {plane_left - 5.0, bitterness_.at(value) + 3.5}, shortest(value));
        }
        drawing.label("mark below", {(plane_left + plane_right) / 2.0, plane_height - 6.0}, "alcohol, % vol");
        drawing.label("mark", {plane_left + 4.0, top + 9.0}, "bitterness, IBU");
    }

    Point corner_of(const PlacedStyle& style) const {
        return {strength_.at(ends_of(style.alcohol, strength_of).low),
                bitterness_.at(ends_of(style.bitterness, bitterness_of).high)};
    }

    void draw(Drawing& drawing, const PlacedStyle& style) const {
        const Point corner = corner_of(style);
        drawing.rectangle(style.marked ? "place marked" : "place", corner,
                          strength_.at(ends_of(style.alcohol, strength_of).high) - corner.x,
                          bitterness_.at(ends_of(style.bitterness, bitterness_of).low) - corner.y);
    }

    void draw_cloud(Drawing& drawing, const Beer& beer) const {
        constexpr std::size_t most_dots = 160;
        const std::size_t count = std::min(beer.alcohol.count(), most_dots);
        for (std::size_t draw = 0; draw < count; ++draw) {
            drawing.dot("draw", at(beer.alcohol[draw], beer.bitterness.total[draw]), 1.5);
        }
        drawing.dot("beer", at(beer.alcohol.median(), beer.bitterness.total.median()), 6.0);
    }

  private:
    template <class Quantity, class EndsOf, class Number>
    static Axis axis_over(const std::vector<PlacedStyle>& styles, const Interval80<Quantity>& beer,
                          double from, double to, EndsOf ends, Number number) {
        const double spread = number(beer.high) - number(beer.low);
        double low = number(beer.low) - spread;
        double high = number(beer.high) + spread;
        for (const PlacedStyle& style : styles) {
            low = std::min(low, ends(style).low);
            high = std::max(high, ends(style).high);
        }
        const double step = step_for(high - low);
        return {std::max(0.0, std::floor(low / step) * step), std::ceil(high / step + 0.2) * step, from, to};
    }

    static std::vector<double> marks(const Axis& axis) {
        const double step = step_for(axis.high() - axis.low());
        std::vector<double> values;
        for (double value = std::ceil(axis.low() / step) * step; value <= axis.high(); value += step) {
            values.push_back(value);
        }
        return values;
    }

    Point at(AlcoholByVolume alcohol, Bitterness bitterness) const {
        return {strength_.at(strength_of(alcohol)), bitterness_.at(bitterness_of(bitterness))};
    }

    Axis strength_;
    Axis bitterness_;
};

PictureWords words_of(const std::vector<PlacedStyle>& styles, const Beer& beer) {
    std::vector<std::string> boxes;
    for (const PlacedStyle& style : styles) {
        const Ends alcohol = ends_of(style.alcohol, strength_of);
        const Ends bitterness = ends_of(style.bitterness, bitterness_of);
        boxes.push_back(fmt::format("{} from {} to {} % and {} to {} IBU", style.code, shortest(alcohol.low),
                                    shortest(alcohol.high), shortest(bitterness.low),
                                    shortest(bitterness.high)));
    }
    return {"The beer among styles by strength and bitterness",
            fmt::format("The beer's middle is at {} % vol and {} IBU. Styles: {}.",
                        fixed(strength_of(beer.alcohol.median()), 1),
                        fixed(bitterness_of(beer.bitterness.total.median()), 0), joined(boxes, "; "))};
}

}  // namespace

std::vector<PlacedStyle> placed(const std::vector<Style>& styles, const Style* marked) {
    std::vector<PlacedStyle> places;
    const auto add = [&](const Style& style, bool is_marked) {
        if (style.ranges.alcohol && style.ranges.bitterness) {
            places.push_back({style.code, *style.ranges.alcohol, *style.ranges.bitterness, is_marked});
        }
    };
    if (marked != nullptr) {
        add(*marked, true);
    }
    for (const Style& style : styles) {
        if (marked == nullptr || style.code != marked->code) {
            add(style, false);
        }
    }
    return places;
}

std::string plane_picture(const std::vector<PlacedStyle>& styles, const Beer& beer) {
    Drawing drawing("plane", width, plane_height, words_of(styles, beer));
    const Plane plane(styles, beer);
    plane.draw_axes(drawing);
    for (const PlacedStyle& style : styles) {
        plane.draw(drawing, style);
    }
    plane.draw_cloud(drawing, beer);
    std::vector<Point> taken{
        {plane_left + 4.0, top + 9.0}, {plane_left + 34.0, top + 9.0}, {plane_left + 64.0, top + 9.0}};
    for (const PlacedStyle& style : styles) {
        drawing.label(style.marked ? "code marked" : "code", place_for_label(plane.corner_of(style), taken),
                      style.code);
    }
    return drawing.svg();
}

}  // namespace entrywise
