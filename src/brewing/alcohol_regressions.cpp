#include "brewing/alcohol_regressions.hpp"

namespace entrywise {

Share alcohol_by_regression(Extract original, Extract apparent) {
    const double fermented = (original - apparent).value();
    return fermented * (0.372 + 0.00357 * original.value()) * percent;
}

Share alcohol_by_de_lange(Extract original, Extract apparent) {
    const double extract = original.value();
    const double factor = 0.39661 + extract * (0.0017091 + 1.0788e-5 * extract);
    return (original - apparent).value() * factor * percent;
}

AlcoholByVolume alcohol_by_gravity_fall(SpecificGravity original_gravity, SpecificGravity final_gravity) {
    return 131.25 * (original_gravity - final_gravity).value() * percent_by_volume;
}

AlcoholByVolume alcohol_by_hall(SpecificGravity original_gravity, SpecificGravity final_gravity) {
    const double original = original_gravity.value();
    const double final = final_gravity.value();
    return 76.08 * (original - final) / (1.775 - original) * (final / 0.794) * percent_by_volume;
}

}  // namespace entrywise
