#include "brewing/isomerization.hpp"

#include <cmath>

namespace entrywise {

RateConstants isomerization_rates(Temperature temperature) {
    const double kelvins = temperature.value();
    const double isomerization_per_minute = 7.9e11 * std::exp(-11858.0 / kelvins);
    const double degradation_per_minute = 4.1e12 * std::exp(-12994.0 / kelvins);
    return {isomerization_per_minute / minute, degradation_per_minute / minute};
}

HopAcids Isomerization::applied_to(HopAcids acids) const {
    return {alpha_left * acids.alpha, alpha_to_iso * acids.alpha + iso_left * acids.iso_alpha};
}

Isomerization Isomerization::then(const Isomerization& next) const {
    return {alpha_left * next.alpha_left, alpha_left * next.alpha_to_iso + alpha_to_iso * next.iso_left,
            iso_left * next.iso_left};
}

Isomerization isomerization(Duration time, const RateConstants& rates) {
    const double isomerized = time * rates.isomerization;
    const double degraded = time * rates.degradation;
    const double alpha_left = std::exp(-isomerized);
    const double iso_left = std::exp(-degraded);
    const double difference = degraded - isomerized;
    // The difference of the two exponentials over that of their exponents, which tends to either at equal
    // rates.
    const double quotient = std::abs(difference) < 1e-7 ? alpha_left : (alpha_left - iso_left) / difference;
    return {alpha_left, isomerized * quotient, iso_left};
}

}  // namespace entrywise
