#include "brewing/dimethyl_sulfide.hpp"

#include <cmath>

namespace entrywise {

Duration precursor_half_life(double ph, Temperature temperature) {
    const double boiling_minutes = 38.0 + (32.5 - 38.0) * (ph - 5.2) / (5.5 - 5.2);
    return boiling_minutes * std::exp2((100.0 - in_celsius(temperature)) / 6.0) * minute;
}

Share precursor_left(Duration time, double ph, Temperature temperature) {
    return std::exp2(-(time / precursor_half_life(ph, temperature))) * whole;
}

Concentration dimethyl_sulfide_formed(Concentration precursor, std::span<const TemperatureStep> steps,
                                      double ph) {
    double half_lives = 0.0;
    for (const TemperatureStep& step : steps) {
        half_lives += step.time / precursor_half_life(ph, step.temperature);
    }
    return -std::expm1(-half_lives * std::log(2.0)) * precursor;
}

}  // namespace entrywise
