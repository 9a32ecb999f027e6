#include "sensing/hops.hpp"

#include "sensing/saturation.hpp"

namespace entrywise {

double hop_aroma_level(Concentration dry_hop_equivalent) {
    return saturating_level(in(dry_hop_equivalent, gram_per_liter), {.half_at = 2.0, .steepness = 0.9});
}

double hop_flavor_level(Concentration dry_hop_equivalent) {
    return saturating_level(in(dry_hop_equivalent, gram_per_liter), {.half_at = 1.8, .steepness = 0.9});
}

}  // namespace entrywise
