#pragma once

#include "style/perception.hpp"

namespace entrywise {

/// Level on the intensity scale from a dose: Hill's curve (Hill, Journal of Physiology 40, 1910), the usual
/// form of a response that has a threshold and saturates.
double saturating_level(double dose, SaturationCurve curve);

}  // namespace entrywise
