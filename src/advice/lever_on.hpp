#pragma once

#include "advice/lever.hpp"

namespace entrywise {

/// A lever that changes a copy of the recipe.
template <class Change, class Told>
Lever lever_on(const Recipe& recipe, double now, Span<double> settings, Change change, Told told) {
    const auto at = [recipe, change](double setting) {
        Recipe changed = recipe;
        change(changed, setting);
        return changed;
    };
    return {.now = now, .lowest = settings.low, .highest = settings.high, .at = at, .told = told};
}

}  // namespace entrywise
