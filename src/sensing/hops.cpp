#include "sensing/hops.hpp"

#include <algorithm>

#include "sensing/saturation.hpp"

namespace entrywise {

namespace {

/// The curves end a little above the scale: the heaviest dry hopping in use, some 15 to 20 g/L, is what
/// guides call very high (common practice), and no dose is so much that more would not be smelled.
double level_of(Concentration dry_hop_equivalent, SaturationCurve curve) {
    constexpr double end_of_curve = 8.0 / 7.0;
    const double level = end_of_curve * saturating_level(in(dry_hop_equivalent, gram_per_liter), curve);
    return std::min(level, 7.0);
}

}  // namespace

double hop_aroma_level(Concentration dry_hop_equivalent) {
    return level_of(dry_hop_equivalent, {.half_at = 2.8, .steepness = 0.82});
}

double hop_flavor_level(Concentration dry_hop_equivalent) {
    return level_of(dry_hop_equivalent, {.half_at = 2.55, .steepness = 0.81});
}

}  // namespace entrywise
