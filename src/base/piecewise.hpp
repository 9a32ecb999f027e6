#pragma once

#include <span>

namespace entrywise {

/// A corner of a line drawn through given points.
struct Corner {
    double at;
    double value;
};

/// The value at a place on the line through the corners, which stand in rising order of `at` and are at least
/// one; before the first and after the last it stays level.
double on_line_through(std::span<const Corner> corners, double at);

}  // namespace entrywise
