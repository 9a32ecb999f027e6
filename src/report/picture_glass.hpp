#pragma once

#include <optional>
#include <string>

#include "brewing/color_spectrum.hpp"
#include "quantity/estimate.hpp"
#include "quantity/quantities.hpp"
#include "style/style.hpp"

namespace entrywise {

/// How wide the glass of the pictures is: a tasting glass.
inline constexpr PathLength glass_width = 5.0 * centimeter;

/// The beer in a round glass of that width before daylight. Each part has the color of the light that goes
/// through it, which has a shorter way near the rim than in the middle.
std::string glass_picture(Color color);

/// The colors of a beer from the low to the high end of its interval across the whole glass, side by side,
/// with the span that a style accepts marked below, on the scale of SRM from 0 to 40.
std::string color_scale_picture(const Interval80<Color>& color, const std::optional<Range<Color>>& accepted);

/// `#C87A2B`: the color of the beer across a glass of a width.
std::string screen_code(Color color, PathLength path);

}  // namespace entrywise
