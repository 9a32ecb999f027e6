#include "brewing/extract_yield.hpp"

#include <cmath>

#include "brewing/water_density.hpp"
#include "quantity/plato.hpp"

namespace entrywise {

Mass extract_yield(Mass addition, Share fine_grind_extract, Share moisture, Share efficiency) {
    return addition * fine_grind_extract.value() * (1.0 - moisture.value()) * efficiency.value();
}

Mass extract_mass(Volume volume, SpecificGravity gravity) {
    return volume * water_density_at_20_celsius * gravity.value() * extract_of(gravity).value() / 100.0;
}

SpecificGravity gravity_of_extract(Mass extract, Volume volume) {
    const double wanted = 100.0 * extract / (volume * water_density_at_20_celsius);
    const auto excess = [wanted](double gravity) {
        return gravity * extract_of(gravity * specific_gravity).value() - wanted;
    };
    // 100 g of extract a liter of water are worth about 0.0386 of gravity: a good first guess for the secant
    // method.
    double before = 1.0;
    double now = 1.0 + 0.00386 * wanted;
    double excess_before = excess(before);
    for (int round = 0; round < 20 && std::abs(now - before) > 1e-9; ++round) {
        const double excess_now = excess(now);
        const double next = now - excess_now * (now - before) / (excess_now - excess_before);
        before = now;
        excess_before = excess_now;
        now = next;
    }
    return now * specific_gravity;
}

}  // namespace entrywise
