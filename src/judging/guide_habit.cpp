#include "judging/guide_habit.hpp"

#include <algorithm>

#include "sensing/middle_of_style.hpp"

namespace entrywise {

double guide_habit(Attribute attribute, const Style& style, const Perception& perception) {
    const auto& expectation = style.expected[attribute];
    const auto middle = expectation ? middle_of(style) : std::nullopt;
    const auto level = middle ? level_at_middle(attribute, *middle, perception) : std::nullopt;
    return level ? *level - std::clamp(*level, expectation->low, expectation->high) : 0.0;
}

}  // namespace entrywise
