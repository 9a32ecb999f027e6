#include "brewing/fusel.hpp"

#include <algorithm>

namespace entrywise {

double fusel_level(TemperatureDifference above_range, double pitch_doublings,
                   SpecificGravity original_gravity) {
    // Working values, all of them.
    constexpr double per_kelvin = 0.25;
    constexpr double most_by_heat = 2.0;
    constexpr double per_halved_pitch = 0.4;
    constexpr double strong_from = 1.080;
    // Small, as what a strong beer's alcohol is said to feel like has the usual fusels of strong wort in it.
    constexpr double per_gravity = 5.0;
    constexpr double most_by_gravity = 0.2;
    constexpr double most = 3.0;
    const double heat = std::clamp(per_kelvin * in(above_range, kelvin), 0.0, most_by_heat);
    const double hunger = per_halved_pitch * std::max(-pitch_doublings, 0.0);
    const double strength = std::clamp(per_gravity * (in(original_gravity, specific_gravity) - strong_from),
                                       0.0, most_by_gravity);
    return std::min(heat + hunger + strength, most);
}

}  // namespace entrywise
