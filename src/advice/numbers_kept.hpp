#pragma once

#include "brewing/beer.hpp"
#include "style/style.hpp"

namespace entrywise {

/// How much further a change to a recipe takes the numbers that a style prints out of their ranges than they
/// were: by the medians of each beer, all numbers together, each by the width of its range; zero where they
/// come nearer. What a style prints no two ends for is kept by any beer.
double numbers_lost(const Style& style, const Beer& before, const Beer& after);

/// Whether less than a twentieth of a width (working value) is lost.
bool numbers_are_kept(const Style& style, const Beer& before, const Beer& after);

}  // namespace entrywise
