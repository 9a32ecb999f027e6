#include "brewing/hop_creep.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

Share hop_creep(Concentration dry_hops, Duration on_yeast, Temperature temperature) {
    constexpr Share most = 0.35 * whole;
    constexpr Concentration half_of_most = 10.0 * gram_per_liter;
    constexpr Duration at_20_celsius = 10.0 * day;
    constexpr double degrees_of_twice_as_fast = 10.0;
    const Concentration dose = std::max(dry_hops, Concentration());
    const double slower = std::exp2((20.0 - in_celsius(temperature)) / degrees_of_twice_as_fast);
    const double course = -std::expm1(-std::max(in(on_yeast, at_20_celsius), 0.0) / slower);
    return course * in(dose, dose + half_of_most) * most;
}

}  // namespace entrywise
