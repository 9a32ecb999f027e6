#include "brewing/balling.hpp"

#include "brewing/ethanol_density.hpp"
#include "brewing/water_density.hpp"
#include "quantity/plato.hpp"

namespace entrywise {

namespace {

constexpr double extract_per_alcohol = 2.0665;
constexpr double gas_and_yeast_per_alcohol = 1.0665;

/// How far alcohol pulls the apparent extract below the real one grows with the original extract.
double attenuation_quotient(Extract original) {
    return 0.22 + 0.001 * original.value();
}

}  // namespace

Extract real_extract(Extract original, Extract apparent) {
    const double quotient = attenuation_quotient(original);
    return (quotient * original + apparent) / (1.0 + quotient);
}

Extract apparent_extract(Extract original, Extract real) {
    const double quotient = attenuation_quotient(original);
    return real * (1.0 + quotient) - quotient * original;
}

Share alcohol_by_weight(Extract original, Extract real) {
    const double fermented = (original - real).value();
    return fermented / (extract_per_alcohol - gas_and_yeast_per_alcohol * original.value() / 100.0) * percent;
}

Extract original_extract(Share alcohol_by_weight, Extract real) {
    const double alcohol = alcohol_by_weight / percent;
    return 100.0 * (extract_per_alcohol * alcohol + real.value()) /
           (100.0 + gas_and_yeast_per_alcohol * alcohol) * plato;
}

AlcoholByVolume alcohol_by_volume(Share by_weight, SpecificGravity final_gravity) {
    const double density_ratio = water_density_at_20_celsius / ethanol_density_at_20_celsius;
    return (by_weight / percent) * final_gravity.value() * density_ratio * percent_by_volume;
}

AlcoholByVolume alcohol_by_volume(SpecificGravity original_gravity, SpecificGravity final_gravity) {
    const Extract original = extract_of(original_gravity);
    const Extract real = real_extract(original, extract_of(final_gravity));
    return alcohol_by_volume(alcohol_by_weight(original, real), final_gravity);
}

Attenuation apparent_attenuation(Extract original, Extract apparent) {
    return (original - apparent) / original * fully_attenuated;
}

Attenuation real_attenuation(Extract original, Extract real) {
    return (original - real) / original * fully_attenuated;
}

Attenuation real_degree_of_fermentation(Extract original, Extract real) {
    return real_attenuation(original, real) / (1.0 - 0.005161 * real.value());
}

Extract real_extract_after(Extract original, Attenuation real_attenuation) {
    return original * (1.0 - real_attenuation.value());
}

}  // namespace entrywise
