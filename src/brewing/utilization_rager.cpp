#include "brewing/utilization_rager.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

Share rager_utilization(Duration boil, SpecificGravity gravity) {
    const double by_time = 18.11 + 13.86 * std::tanh((in(boil, minute) - 31.32) / 18.27);
    const double gravity_adjustment = std::max(0.0, gravity.value() - 1.050) / 0.2;
    return by_time / (1.0 + gravity_adjustment) * percent;
}

}  // namespace entrywise
