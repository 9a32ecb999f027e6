#include "brewing/ferulic_rest.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/piecewise.hpp"

namespace entrywise {

double phenol_from_ferulic_rest(const std::vector<MashRest>& mash) {
    constexpr std::array<Corner, 4> by_celsius{{{38.0, 0.0}, {43.0, 1.0}, {46.0, 1.0}, {52.0, 0.0}}};
    constexpr Duration time_constant = 10.0 * minute;
    constexpr double most = 0.6;
    double worked = 0.0;
    for (const MashRest& rest : mash) {
        worked += on_line_through(by_celsius, in_celsius(rest.temperature)) * (rest.time / time_constant);
    }
    return most * -std::expm1(-worked);
}

}  // namespace entrywise
