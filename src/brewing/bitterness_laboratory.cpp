#include "brewing/bitterness_laboratory.hpp"

#include <algorithm>

namespace entrywise {

namespace {

/// A limit that 95 % of pairs keep over the standard deviation: 1.96 times the square root of two.
constexpr double deviations_in_limit = 2.77;

}  // namespace

Bitterness laboratory_repeatability(Bitterness mean) {
    return std::max(0.0, -0.36 + 0.05 * mean.value()) / deviations_in_limit * ibu;
}

Bitterness laboratory_reproducibility(Bitterness mean) {
    return (0.72 + 0.14 * mean.value()) / deviations_in_limit * ibu;
}

}  // namespace entrywise
