#include "brewing/water_density.hpp"

namespace entrywise {

Concentration water_density(Temperature temperature) {
    const double t = in_celsius(temperature);
    const double numerator =
        999.83952 +
        t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
    return numerator / (1.0 + 16.879850e-3 * t) * gram_per_liter;
}

}  // namespace entrywise
