#include "brewing/hop_storage.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

double package_factor(HopPackage package) {
    switch (package) {
        case HopPackage::sealed_barrier:
            return 0.75;
        case HopPackage::barrier_without_oxygen:
            return 0.5;
        case HopPackage::open:
            break;
    }
    return 1.0;
}

}  // namespace

Share alpha_lost_at_storage_index(double storage_index) {
    constexpr double fresh = 0.25;
    return std::clamp(110.0 * std::log10(storage_index / fresh), 0.0, 100.0) * percent;
}

Share alpha_left_in_store(Share lost_in_six_months, Duration stored, Temperature temperature,
                          HopPackage package) {
    const double temperature_factor = std::exp2((in_celsius(temperature) - 20.0) / 15.0);
    const double half_years = stored / (180.0 * day);
    const double exponent = half_years * temperature_factor * package_factor(package);
    return std::pow(1.0 - lost_in_six_months.value(), exponent) * whole;
}

}  // namespace entrywise
