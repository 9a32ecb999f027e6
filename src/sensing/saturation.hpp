#pragma once

namespace entrywise {

/// A curve that rises from nothing and flattens out toward the strongest word.
struct SaturationCurve {
    double half_at = 1.0;    ///< dose at which half of the strongest is sensed
    double steepness = 1.0;  ///< 1 rises at once; more than 1 keeps small doses unnoticed
};

/// Level on the intensity scale from a dose: Hill's curve (Hill, Journal of Physiology 40, 1910), the usual
/// form of a response that has a threshold and saturates.
double saturating_level(double dose, SaturationCurve curve);

}  // namespace entrywise
