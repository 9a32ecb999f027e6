#include "advice/hop_limits.hpp"

namespace entrywise {

Concentration most_of_hops(HopUse use) {
    switch (use) {
        case HopUse::dry_hop:
            return 12.0 * gram_per_liter;
        case HopUse::whirlpool:
            return 10.0 * gram_per_liter;
        case HopUse::mash:
        case HopUse::first_wort:
        case HopUse::boil:
            break;
    }
    return 6.0 * gram_per_liter;
}

}  // namespace entrywise
