#include "judging/guide_habit.hpp"

#include <algorithm>

#include "sensing/middle_of_style.hpp"

namespace entrywise {

namespace {

/// Where in the accepted words a level in the middle of the style belongs: where it is, or half a step inside
/// their border, as what is brewed to the middle of a style is no border case (working value). An end of the
/// scale is no border.
double heart_of(Attribute attribute, const Expectation& expectation, double level) {
    constexpr double inside = 0.5;
    const double margin = std::min(inside, 0.5 * (expectation.high - expectation.low));
    const double low = expectation.low > 0.0 ? expectation.low + margin : expectation.low;
    const double high =
        expectation.high < highest_level(attribute) ? expectation.high - margin : expectation.high;
    return std::clamp(level, low, high);
}

}  // namespace

ByAttribute<double> guide_habits(const Style& style, const Perception& perception) {
    ByAttribute<double> habits;
    const auto middle = middle_of(style);
    if (!middle) {
        return habits;
    }
    const ByAttribute<std::optional<double>> levels = levels_at_middle(*middle, perception);
    for (const Attribute attribute : all_attributes()) {
        if (const auto& expectation = style.expected[attribute]; expectation && levels[attribute]) {
            habits[attribute] = *levels[attribute] - heart_of(attribute, *expectation, *levels[attribute]);
        }
    }
    return habits;
}

}  // namespace entrywise
