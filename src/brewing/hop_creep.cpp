#include "brewing/hop_creep.hpp"

#include <algorithm>
#include <cmath>

#include "brewing/process.hpp"

namespace entrywise {

namespace {

bool creeps(const HopAddition& addition) {
    return addition.use == HopUse::dry_hop && addition.form != HopForm::extract && addition.mass > Mass();
}

Mass all_that_creep(std::span<const HopAddition> hops) {
    Mass all;
    for (const HopAddition& addition : hops) {
        all += creeps(addition) ? addition.mass : Mass();
    }
    return all;
}

}  // namespace

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

Share hop_creep(std::span<const HopAddition> hops, Volume beer, Temperature fermentation) {
    const Mass all = all_that_creep(hops);
    Share creep;
    for (const HopAddition& addition : hops) {
        if (creeps(addition)) {
            creep +=
                in(addition.mass, all) * hop_creep(all / beer, addition.time.value_or(usual_dry_hop_time),
                                                   addition.temperature.value_or(fermentation));
        }
    }
    return creep;
}

Share hop_creep_to_come(std::span<const HopAddition> hops, Volume beer, Temperature fermentation) {
    const Share in_the_end = hop_creep(all_that_creep(hops) / beer, 8.0 * week, celsius(20.0));
    return std::max(in_the_end - hop_creep(hops, beer, fermentation), Share());
}

}  // namespace entrywise
