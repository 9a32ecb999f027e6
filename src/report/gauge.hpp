#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "quantity/estimate.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// A range and an estimate drawn on one line of so many columns, at least 8: the range as a thin line between
/// its ends, the estimate's interval as a heavy one with a dot at its median. What lies beyond the drawing is
/// told by a point at its end. A range open at an end runs on to there.
std::string gauge(const Interval80<double>& estimate, std::optional<double> low, std::optional<double> high,
                  std::size_t columns, const TextStyle& style);

/// A part of a whole as a bar of so many columns; a part that is not nothing is never drawn as nothing.
std::string bar(double part, double whole, std::size_t columns, const TextStyle& style);

}  // namespace entrywise
