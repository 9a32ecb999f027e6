#include "sensing/saturation.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

double saturating_level(double dose, SaturationCurve curve) {
    constexpr double strongest = 7.0;
    const double relative = std::pow(std::max(dose, 0.0) / curve.half_at, curve.steepness);
    return strongest * relative / (1.0 + relative);
}

}  // namespace entrywise
