#include "report/drawing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "base/number.hpp"
#include "report/filled_template.hpp"

namespace entrywise {

namespace {

std::string head_of(std::string_view name, double width, double height, std::string_view fit,
                    const PictureWords& words) {
    const std::string description =
        words.description.empty() ? "" : fmt::format("<desc>{}</desc>", escaped(words.description));
    return fmt::format(
        "<svg class=\"{}\" role=\"img\" viewBox=\"0 0 {} {}\" width=\"{}\" "
        "height=\"{}\"{}><title>{}</title>{}",
        name, coordinate(width), coordinate(height), coordinate(width), coordinate(height), fit,
        escaped(words.title), description);
}

std::string path_through(const std::vector<Point>& points) {
    std::string path;
    for (const Point& point : points) {
        path += fmt::format("{}{} {}", path.empty() ? 'M' : 'L', coordinate(point.x), coordinate(point.y));
    }
    return path;
}

}  // namespace

double Axis::at(double value) const {
    const double share = high_ > low_ ? (std::clamp(value, low_, high_) - low_) / (high_ - low_) : 0.5;
    return from_ + share * (to_ - from_);
}

Drawing::Drawing(const std::string& name, double width, double height, const PictureWords& words)
    : head_(head_of(name, width, height, "", words)) {}

Drawing Drawing::stretched(const std::string& name, double height, const PictureWords& words) {
    constexpr double width = 100.0;
    Drawing drawing(name, width, height, {});
    drawing.head_ = head_of("stretched " + name, width, height, " preserveAspectRatio=\"none\"", words);
    return drawing;
}

void Drawing::rectangle(std::string_view name, Point corner, double width, double height) {
    shapes_ += fmt::format("<rect class=\"{}\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>", name,
                           coordinate(corner.x), coordinate(corner.y), coordinate(width), coordinate(height));
}

void Drawing::painted(std::string_view color, Point corner, double width, double height) {
    shapes_ += fmt::format("<rect fill=\"{}\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>", color,
                           coordinate(corner.x), coordinate(corner.y), coordinate(width), coordinate(height));
}

void Drawing::line(std::string_view name, Point from, Point to) {
    shapes_ += fmt::format("<path class=\"{}\" d=\"{}\"/>", name, path_through({from, to}));
}

void Drawing::curve(std::string_view name, const std::vector<Point>& points) {
    shapes_ += fmt::format("<path class=\"{}\" d=\"{}\"/>", name, path_through(points));
}

void Drawing::area(std::string_view name, const std::vector<Point>& points) {
    shapes_ += fmt::format("<path class=\"{}\" d=\"{}Z\"/>", name, path_through(points));
}

void Drawing::dot(std::string_view name, Point center, double radius) {
    shapes_ += fmt::format("<circle class=\"{}\" cx=\"{}\" cy=\"{}\" r=\"{}\"/>", name, coordinate(center.x),
                           coordinate(center.y), coordinate(radius));
}

void Drawing::label(std::string_view name, Point at, std::string_view text) {
    shapes_ += fmt::format("<text class=\"{}\" x=\"{}\" y=\"{}\">{}</text>", name, coordinate(at.x),
                           coordinate(at.y), escaped(text));
}

std::string Drawing::svg() const {
    return head_ + shapes_ + "</svg>";
}

std::string coordinate(double number) {
    constexpr int decimals = 2;
    return shortest(rounded(number, decimals) + 0.0);
}

}  // namespace entrywise
