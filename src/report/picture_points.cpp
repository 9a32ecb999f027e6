#include "report/picture_points.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/number.hpp"
#include "report/drawing.hpp"

namespace entrywise {

namespace {

constexpr double pitch = 13.0;
constexpr double box = 10.5;
constexpr double box_top = 1.0;

std::string in_words(double low, double middle, double high) {
    return fmt::format("{}, eight in ten from {} to {}", fixed(middle, 1), fixed(low, 1), fixed(high, 1));
}

/// The left edge, in points, of what is struck out of a box.
void draw_box(Drawing& drawing, double index, double kept) {
    const double x = index * pitch + 1.0;
    drawing.rectangle("box", {x, box_top}, box, box);
    const double struck = std::clamp(index + 1.0 - kept, 0.0, 1.0);
    constexpr double hardly_seen = 0.04;
    if (struck < hardly_seen) {
        return;
    }
    const double width = struck * box;
    drawing.rectangle("struck", {x + box - width, box_top}, width, box);
    drawing.line("stroke", {x + box - width, box_top + box}, {x + box, box_top + box - width});
}

}  // namespace

std::string points_picture(std::string_view section, const PointsAtRisk& at_risk, double points) {
    constexpr double most_points = 20.0;
    const double boxes = std::max(most_points, points);
    Drawing drawing("points", boxes * pitch + 2.0, 20.0,
                    {fmt::format("{} points at risk of {}", fixed(at_risk.median, 1), shortest(points)),
                     fmt::format("{}: {}.", section, in_words(at_risk.low, at_risk.median, at_risk.high))});
    const double kept = points - rounded(at_risk.median, 1);
    for (double index = 0.0; index < points; index += 1.0) {
        draw_box(drawing, index, kept);
    }
    const Axis axis(0.0, points, points * pitch, 1.0);
    if (rounded(at_risk.high, 1) > 0.0) {
        constexpr double y = 16.5;
        drawing.line("span", {axis.at(at_risk.high), y}, {axis.at(at_risk.low), y});
        drawing.line("middle", {axis.at(at_risk.median), y - 2.5}, {axis.at(at_risk.median), y + 2.5});
    }
    return drawing.svg();
}

std::string risk_picture(std::string_view of, const PointsAtRisk& at_risk, double most) {
    constexpr double height = 16.0;
    Drawing drawing = Drawing::stretched(
        "risk", height,
        {fmt::format("Points at risk as {}", of), in_words(at_risk.low, at_risk.median, at_risk.high) + "."});
    const Axis axis(0.0, most, 1.0, 99.0);
    drawing.line("ground", {1.0, height / 2.0}, {99.0, height / 2.0});
    drawing.line("post", {1.0, 2.0}, {1.0, height - 2.0});
    drawing.line("span", {axis.at(at_risk.low), height / 2.0}, {axis.at(at_risk.high), height / 2.0});
    drawing.line("middle", {axis.at(at_risk.median), 2.0}, {axis.at(at_risk.median), height - 2.0});
    return drawing.svg();
}

std::string score_picture(std::string_view section, double given, const Interval80<double>& expected,
                          double points) {
    constexpr double height = 20.0;
    Drawing drawing =
        Drawing::stretched("score", height,
                           {fmt::format("{}: points given beside those expected", section),
                            fmt::format("given {} of {}; expected {}.", shortest(given), shortest(points),
                                        in_words(expected.low, expected.median, expected.high))});
    const Axis axis(0.0, points, 1.0, 99.0);
    const double y = height / 2.0;
    drawing.line("ground", {1.0, y}, {99.0, y});
    drawing.rectangle("band", {axis.at(expected.low), 2.0}, axis.at(expected.high) - axis.at(expected.low),
                      height - 4.0);
    drawing.line("post", {axis.at(expected.low), 2.0}, {axis.at(expected.low), height - 2.0});
    drawing.line("post", {axis.at(expected.high), 2.0}, {axis.at(expected.high), height - 2.0});
    drawing.line("middle", {axis.at(given), 0.0}, {axis.at(given), height});
    return drawing.svg();
}

}  // namespace entrywise
