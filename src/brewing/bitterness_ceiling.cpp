#include "brewing/bitterness_ceiling.hpp"

#include <cmath>

namespace entrywise {

Bitterness held_in_beer(Bitterness of_all_hops, Bitterness ceiling) {
    const double crowding = in(of_all_hops, ceiling);
    const double fourth_power = crowding * crowding * crowding * crowding;
    return of_all_hops / std::sqrt(std::sqrt(1.0 + fourth_power));
}

}  // namespace entrywise
