#include "report/picture_glass.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "base/number.hpp"
#include "report/color_words.hpp"
#include "report/drawing.hpp"

namespace entrywise {

namespace {

std::string in_srm(Color color) {
    return fixed(in(color, srm), 1);
}

/// The way of light through a round glass at a distance from its middle, given as a share of its radius.
PathLength chord(double offset) {
    return glass_width * std::sqrt(std::max(0.0, 1.0 - offset * offset));
}

}  // namespace

std::string screen_code(Color color, PathLength path) {
    const ScreenColor level = screen_color(tristimulus(color, path));
    return fmt::format("#{:02X}{:02X}{:02X}", level.red, level.green, level.blue);
}

std::string glass_picture(Color color) {
    constexpr double width = 96.0;
    constexpr double height = 132.0;
    constexpr double wall = 5.0;
    constexpr double foam = 14.0;
    constexpr double beer_top = 26.0;
    constexpr double beer_bottom = 122.0;
    constexpr int strips = 40;
    Drawing drawing("glass", width, height,
                    {fmt::format("The beer in a glass: {}", color_word(color)),
                     fmt::format("{} SRM in a round glass 5 cm wide before daylight.", in_srm(color))});
    const double strip = (width - 2.0 * wall) / strips;
    for (int index = 0; index < strips; ++index) {
        const double offset = (2.0 * index + 1.0) / strips - 1.0;
        // Each reaches to the far wall and is painted over by the next, so that no seam shows.
        const double x = wall + strip * index;
        drawing.painted(screen_code(color, chord(offset)), {x, beer_top}, width - wall - x,
                        beer_bottom - beer_top);
    }
    drawing.rectangle("foam", {wall, beer_top - foam}, width - 2.0 * wall, foam);
    drawing.curve("glass-wall", {{2.0, 2.0}, {2.0, 129.0}, {94.0, 129.0}, {94.0, 2.0}});
    return drawing.svg();
}

std::string color_scale_picture(const Interval80<Color>& color, const std::optional<Range<Color>>& accepted) {
    constexpr double darkest = 40.0;
    constexpr double height = 30.0;
    constexpr int strips = 80;
    const std::string asked =
        accepted ? fmt::format("The style accepts {}.", color_words(*accepted)) : std::string();
    Drawing drawing =
        Drawing::stretched("color-scale", height,
                           {"The color on the scale from 0 to 40 SRM",
                            fmt::format("{}, eight in ten from {} to {} SRM. {}", in_srm(color.median),
                                        in_srm(color.low), in_srm(color.high), asked)});
    const Axis axis(0.0, darkest, 0.0, 100.0);
    for (int index = 0; index < strips; ++index) {
        const double level = darkest * (index + 0.5) / strips;
        const double x = 100.0 * index / strips;
        drawing.painted(screen_code(level * srm, glass_width), {x, 8.0}, 100.0 - x, 14.0);
    }
    if (accepted) {
        const double from = axis.at(accepted->low ? in(*accepted->low, srm) : 0.0);
        const double to = axis.at(accepted->high ? in(*accepted->high, srm) : darkest);
        drawing.line("accepted", {from, 27.0}, {to, 27.0});
        drawing.line("post", {from, 23.5}, {from, 30.0});
        drawing.line("post", {to, 23.5}, {to, 30.0});
    }
    drawing.line("span", {axis.at(in(color.low, srm)), 4.0}, {axis.at(in(color.high, srm)), 4.0});
    drawing.line("middle", {axis.at(in(color.median, srm)), 0.0}, {axis.at(in(color.median, srm)), 8.0});
    return drawing.svg();
}

}  // namespace entrywise
