#pragma once

#include "brewing/beer.hpp"
#include "style/style.hpp"

namespace entrywise {

/// How far the numbers that a style prints lie outside their ranges: by the medians of the beer, all numbers
/// together, each by the width of its range. What a style prints no two ends for is kept by any beer.
double numbers_outside(const Style& style, const Beer& beer);

/// Whether a change to a recipe takes them less than a twentieth of a width (working value) further out than
/// they were.
bool numbers_are_kept(const Style& style, const Beer& before, const Beer& after);

}  // namespace entrywise
