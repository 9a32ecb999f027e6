#include "brewing/carbonation.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

/// Volumes for each psi of absolute pressure.
double de_lange_solubility(Temperature temperature) {
    return 0.01821 + 0.090115 * std::exp(-(in_fahrenheit(temperature) - 32.0) / 43.11);
}

constexpr double de_lange_offset = 0.003342;
constexpr double atmosphere_in_psi = 14.695;
constexpr double atmosphere_in_bar = 1.013;

/// Grams a liter for each bar of absolute pressure.
double physical_solubility(Temperature temperature) {
    return 10.0 * std::exp(-10.73797 + 2617.25 / temperature.value());
}

}  // namespace

Concentration carbon_dioxide_concentration(Carbonation carbonation) {
    return carbonation.value() * carbon_dioxide_in_one_volume;
}

Carbonation carbonation_of(Concentration carbon_dioxide) {
    return in(carbon_dioxide, carbon_dioxide_in_one_volume) * volume_of_co2;
}

Carbonation carbonation_at_equilibrium(GaugePressure pressure, Temperature temperature) {
    const double absolute = in(pressure, pound_per_square_inch) + atmosphere_in_psi;
    return (absolute * de_lange_solubility(temperature) - de_lange_offset) * volume_of_co2;
}

GaugePressure equilibrium_pressure(Carbonation carbonation, Temperature temperature) {
    const double absolute = (carbonation.value() + de_lange_offset) / de_lange_solubility(temperature);
    return (absolute - atmosphere_in_psi) * pound_per_square_inch;
}

Concentration dissolved_carbon_dioxide(GaugePressure pressure, Temperature temperature) {
    return (in(pressure, bar) + atmosphere_in_bar) * physical_solubility(temperature) * gram_per_liter;
}

GaugePressure physical_equilibrium_pressure(Carbonation carbonation, Temperature temperature) {
    const double dissolved = in(carbon_dioxide_concentration(carbonation), gram_per_liter);
    return (dissolved / physical_solubility(temperature) - atmosphere_in_bar) * bar;
}

GaugePressure keg_pressure(Carbonation carbonation, Temperature temperature) {
    const double warmth = in_fahrenheit(temperature);
    const double volumes = carbonation.value();
    const double psi = -16.6999 - 0.0101059 * warmth + 0.00116512 * warmth * warmth +
                       0.173354 * warmth * volumes + 4.24267 * volumes - 0.0684226 * volumes * volumes;
    return psi * pound_per_square_inch;
}

GaugePressure bottle_pressure(Carbonation carbonation, Temperature temperature) {
    return std::max(equilibrium_pressure(carbonation, temperature),
                    physical_equilibrium_pressure(carbonation, temperature));
}

Carbonation residual_carbonation(Temperature warmest_since_fermentation) {
    const double warmth = in_fahrenheit(warmest_since_fermentation);
    return (3.0378 - 0.050062 * warmth + 0.00026555 * warmth * warmth) * volume_of_co2;
}

Share carbon_dioxide_yield(PrimingSugar sugar) {
    switch (sugar) {
        case PrimingSugar::glucose_monohydrate:
            return 0.4442 * whole;
        case PrimingSugar::sucrose:
            return 0.5143 * whole;
        case PrimingSugar::glucose:
            break;
    }
    return 0.4886 * whole;
}

Share carbon_dioxide_yield_of_extract() {
    return 0.9565 / 2.0665 * whole;
}

Mass priming_sugar(PrimingSugar sugar, Volume beer, Carbonation residual, Carbonation wanted) {
    const Carbonation rise = std::max(Carbonation(), wanted - residual);
    return carbon_dioxide_concentration(rise) * beer / carbon_dioxide_yield(sugar).value();
}

}  // namespace entrywise
