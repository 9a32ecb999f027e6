#pragma once

#include <cmath>

namespace entrywise::testing {

/// Whether two numbers differ by no more than a stated tolerance. Unlike a relative comparison with hidden
/// slack it means just what it says; not-a-number is within nothing.
inline bool within(double value, double expected, double tolerance) {
    return std::abs(value - expected) <= tolerance;
}

}  // namespace entrywise::testing
