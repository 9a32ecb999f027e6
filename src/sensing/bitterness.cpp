#include "sensing/bitterness.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

double bitterness_ratio(Bitterness bitterness, SpecificGravity original_gravity) {
    constexpr double fewest_points = 10.0;
    const double points = 1000.0 * (in(original_gravity, specific_gravity) - 1.0);
    return std::max(in(bitterness, ibu), 0.0) / std::max(points, fewest_points);
}

double bitterness_level(const BitternessMap& map, Bitterness bitterness, SpecificGravity original_gravity,
                        double sour, double roast) {
    // Far above what iso-alpha-acids reach in beer, so that the response stays nearly straight where beers
    // are (working value).
    constexpr double half_saturation_ibu = 100.0;
    // More hops than this to the malt is told no more (working value).
    constexpr double highest_ratio = 1.3;
    const double ibus = std::max(in(bitterness, ibu), 0.0);
    const double ratio = std::min(bitterness_ratio(bitterness, original_gravity), highest_ratio);
    const double bare = map.by_amount * ibus / (ibus + half_saturation_ibu) + map.by_ratio * ratio;
    const double left = 1.0 - map.masked_by_sour * sour - map.masked_by_roast * roast;
    return std::clamp(bare * std::max(left, 0.0), 0.0, 7.0);
}

double balance_level(const BalanceMap& map, Bitterness bitterness, SpecificGravity original_gravity,
                     Attenuation apparent_attenuation, Carbonation carbonation) {
    constexpr double even_ratio = 0.5;
    constexpr double least_ratio = 0.02;
    constexpr double usual_attenuation = 0.7655;
    constexpr Carbonation usual_carbonation = 2.5 * volume_of_co2;
    const double ratio = std::max(bitterness_ratio(bitterness, original_gravity), least_ratio);
    const double drier = 10.0 * (in(apparent_attenuation, fully_attenuated) - usual_attenuation);
    const double level = map.at_even + map.by_doubling * std::log2(ratio / even_ratio) +
                         map.by_attenuation * drier +
                         map.by_carbonation * in(carbonation - usual_carbonation, volume_of_co2);
    return std::clamp(level, 0.0, 6.0);
}

}  // namespace entrywise
