#include "brewing/maturation.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

/// How well a rest works at its temperature: nothing at 10 °C, as well as it can from 16 °C.
double warmth_of(const DiacetylRest& rest) {
    return std::clamp((in_celsius(rest.temperature) - 10.0) / 6.0, 0.0, 1.0);
}

/// Days of fermentation after which the yeast has taken up its diacetyl by itself (common practice).
double usual_days(Fermentation fermentation) {
    switch (fermentation) {
        case Fermentation::top:
            return 7.0;
        case Fermentation::bottom:
            return 12.0;
        case Fermentation::mixed:
            return 0.0;
    }
    return 0.0;
}

double taken_by_rest(const Maturation& maturation) {
    constexpr double most = 0.6;
    return maturation.rest ? most * warmth_of(*maturation.rest) * -std::expm1(-in(maturation.rest->time, day))
                           : 0.0;
}

/// A day of a warm rest does what three do at the temperature of a lager's fermentation.
double left_by_haste(const Maturation& maturation) {
    constexpr double per_missing_day = 0.3;
    constexpr double most = 2.0;
    if (!maturation.on_yeast) {
        return 0.0;
    }
    const double gained =
        maturation.rest ? 2.0 * warmth_of(*maturation.rest) * in(maturation.rest->time, day) : 0.0;
    const double missing = usual_days(maturation.fermentation) - in(*maturation.on_yeast, day) - gained;
    return std::clamp(per_missing_day * missing, 0.0, most);
}

}  // namespace

double diacetyl_change(const Maturation& maturation) {
    constexpr double per_cold_week = 0.1;
    constexpr double most_by_cold = 0.5;
    constexpr double per_halved_pitch = 0.4;
    const double by_cold = std::min(per_cold_week * maturation.cold_weeks, most_by_cold);
    const double by_hunger = per_halved_pitch * std::max(-maturation.pitch_doublings, 0.0);
    return left_by_haste(maturation) + by_hunger - taken_by_rest(maturation) - by_cold;
}

double sulfur_factor(const Maturation& maturation) {
    constexpr Duration halves_in = 4.0 * week;
    constexpr double more_for_each_halved_pitch = 0.25;
    const Duration usual = (maturation.fermentation == Fermentation::bottom ? 4.0 : 2.0) * week;
    const double faded = maturation.conditioned
                             ? std::clamp(std::exp2((usual - *maturation.conditioned) / halves_in), 0.35, 1.6)
                             : 1.0;
    return faded * (1.0 + more_for_each_halved_pitch * std::max(-maturation.pitch_doublings, 0.0));
}

}  // namespace entrywise
