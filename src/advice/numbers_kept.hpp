#pragma once

#include "brewing/beer.hpp"
#include "style/style.hpp"

namespace entrywise {

/// Whether a change to a recipe leaves the numbers that a style prints no further out of their ranges than
/// they were: by the medians of each beer, all numbers together, each by the width of its range. Less than a
/// twentieth of a width (working value) is let pass. What a style prints no two ends for is kept by any beer.
bool numbers_are_kept(const Style& style, const Beer& before, const Beer& after);

}  // namespace entrywise
