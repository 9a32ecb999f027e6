#include "brewing/hop_oil.hpp"

#include <cmath>

#include "base/piecewise.hpp"

namespace entrywise {

namespace {

// Working values, all of them: by what is smelled and tasted of an addition beside a dry hop of the same
// hops, not by what a laboratory finds of single oils.
constexpr double left_at_flame_out = 0.44;
constexpr Duration boil_time_constant = 17.0 * minute;
constexpr Duration flavor_time_constant = 28.0 * minute;
constexpr Duration stand_time_constant = 10.0 * minute;
constexpr double won_by_light_dry_hop = 0.60;
constexpr Duration dry_hop_time_constant = 8.0 * hour;
constexpr Concentration saturating_rate = 20.0 * gram_per_liter;

/// What a long stand keeps, by degrees Celsius.
constexpr Corner kept_by_stand[] = {{70.0, 0.48}, {95.0, 0.45}};

}  // namespace

Share oil_dose(Concentration hops, OilContent oil) {
    return hops * oil * whole;
}

Share oil_left_after_boil(Duration boil) {
    return left_at_flame_out * std::exp(-(boil / boil_time_constant)) * whole;
}

Share hop_flavor_left_after_boil(Duration boil) {
    return left_at_flame_out * std::exp(-(boil / flavor_time_constant)) * whole;
}

Share oil_left_after_whirlpool(Duration stand, Temperature temperature) {
    const double kept = on_line_through(kept_by_stand, in_celsius(temperature));
    const double extracted = -std::expm1(-(stand / stand_time_constant));
    return (left_at_flame_out + (kept - left_at_flame_out) * extracted) * whole;
}

Share oil_won_by_dry_hop(Concentration all_dry_hops, Duration contact) {
    const double relative_rate = all_dry_hops / saturating_rate;
    const double extracted = -std::expm1(-(contact / dry_hop_time_constant));
    const double uncrowded = relative_rate > 1e-9 ? -std::expm1(-relative_rate) / relative_rate : 1.0;
    return won_by_light_dry_hop * uncrowded * extracted * whole;
}

Share hop_oil_left_after_keeping(Duration age, Temperature temperature) {
    constexpr Duration warm_half_life = 75.0 * day;
    constexpr double for_each_10_degrees = 2.5;
    const double slower = std::pow(for_each_10_degrees, (20.0 - in_celsius(temperature)) / 10.0);
    return std::exp2(-(age / (slower * warm_half_life))) * whole;
}

}  // namespace entrywise
