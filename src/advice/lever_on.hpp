#pragma once

#include "advice/lever.hpp"

namespace entrywise {

// How finely levers are set: masses to a hundredth of themselves, new ones by the gram, settings to half of
// what is read off.
inline constexpr double one_percent = 0.01;
inline constexpr double a_fiftieth_of_a_gram = 0.02;  // per liter
inline constexpr double half_a_degree = 0.5;
inline constexpr double half_a_tenth = 0.05;

/// A lever that changes a copy of the recipe.
template <class Change, class Told>
Lever lever_on(const Recipe& recipe, double now, Span<double> settings, double step, Change change,
               Told told) {
    const auto at = [recipe, change](double setting) {
        Recipe changed = recipe;
        change(changed, setting);
        return changed;
    };
    return {
        .now = now, .lowest = settings.low, .highest = settings.high, .step = step, .at = at, .told = told};
}

}  // namespace entrywise
