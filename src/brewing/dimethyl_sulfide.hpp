#pragma once

#include <span>

#include "brewing/wort_cooling.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

/// Time in which half of the precursor of dimethyl sulfide (S-methylmethionine) breaks down in wort. Valid
/// for pH 5.0..5.6 and 80..105 °C; it doubles for each 6 °C lower. Source: Dickenson, Dimethyl sulphide, its
/// origin and control in brewing, Journal of the Institute of Brewing 85, 1979: 38 min at pH 5.2 and 32.5 min
/// at pH 5.5, boiling.
Duration precursor_half_life(double ph, Temperature temperature);

/// Share of the precursor that is left after a time.
Share precursor_left(Duration time, double ph, Temperature temperature);

/// Dimethyl sulfide that forms from the precursor in the steps after the boil, where hardly any is driven off
/// any more. The precursor is stated as the dimethyl sulfide that it can become.
Concentration dimethyl_sulfide_formed(Concentration precursor, std::span<const TemperatureStep> steps,
                                      double ph);

}  // namespace entrywise
