#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Degrees Plato of a wort or beer of this specific gravity (20/20 °C, weighed in air as the table has it).
/// Valid for 1.000..1.179 (0..40 °P), root mean square error 0.0009 °P against the table of the National
/// Bureau of Standards; carries on smoothly to 0.990 for very dry beer, whose apparent extract is below zero.
/// Source: Lincoln, Parametric equations for brewing computations, MBAA Technical Quarterly 24, 1987, cubic
/// fitted to Bates et al., Polarimetry, saccharimetry and the sugars, NBS Circular C440, 1942.
Extract extract_of(SpecificGravity gravity);

/// The specific gravity of which `extract_of` gives this extract, to 1e-10. Valid for -3..40 °P.
SpecificGravity specific_gravity_of(Extract extract);

}  // namespace entrywise
