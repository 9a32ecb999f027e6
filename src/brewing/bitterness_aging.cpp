#include "brewing/bitterness_aging.hpp"

#include <cmath>

namespace entrywise {

Share bitterness_left_in_home_made_beer(Duration age) {
    return (0.33 * std::exp(-0.076 * in(age, week)) + 0.67) * whole;
}

Share bitterness_left_in_bottled_beer(Duration age) {
    constexpr Duration eight_months = 8.0 / 12.0 * 365.25 * day;
    return std::pow(1.0 - 0.14, age / eight_months) * whole;
}

}  // namespace entrywise
