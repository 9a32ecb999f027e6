#include "judging/guide_habit.hpp"

#include <algorithm>

#include "sensing/middle_of_style.hpp"

namespace entrywise {

ByAttribute<double> guide_habits(const Style& style, const Perception& perception) {
    ByAttribute<double> habits;
    const auto middle = middle_of(style);
    if (!middle) {
        return habits;
    }
    const ByAttribute<std::optional<double>> levels = levels_at_middle(*middle, perception);
    for (const Attribute attribute : all_attributes()) {
        if (const auto& expectation = style.expected[attribute]; expectation && levels[attribute]) {
            const double level = *levels[attribute];
            habits[attribute] = level - std::clamp(level, expectation->low, expectation->high);
        }
    }
    return habits;
}

}  // namespace entrywise
