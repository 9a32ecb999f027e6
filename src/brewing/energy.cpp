#include "brewing/energy.hpp"

#include "brewing/water_density.hpp"

namespace entrywise {

EnergyContent energy(Share alcohol_by_weight, Extract real, SpecificGravity final_gravity) {
    constexpr double ash = 0.1;
    const double per_100_gram = 6.9 * (alcohol_by_weight / percent) + 4.0 * (real.value() - ash);
    const double gram_per_milliliter =
        final_gravity.value() * (water_density_at_20_celsius / gram_per_liter) / 1e3;
    return per_100_gram * gram_per_milliliter * kilocalorie_per_100_milliliter;
}

}  // namespace entrywise
