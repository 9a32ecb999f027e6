#include "brewing/utilization_tinseth.hpp"

#include <cmath>

namespace entrywise {

Share tinseth_utilization(Duration boil, SpecificGravity gravity) {
    const double bigness = 1.65 * std::pow(0.000125, gravity.value() - 1.0);
    const double by_time = (1.0 - std::exp(-0.04 * in(boil, minute))) / 4.15;
    return bigness * by_time * whole;
}

}  // namespace entrywise
