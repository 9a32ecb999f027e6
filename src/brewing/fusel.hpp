#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Steps by which higher alcohols make a beer warmer and hotter than its alcohol by itself: for a
/// fermentation above the range of its yeast, for too little yeast, and a little for the stress of a wort
/// above 1.080. Between 0 and 3. Direction: Pires et al., Yeast: the soul of beer's aroma, Applied
/// Microbiology and Biotechnology 98, 2014, from memory (warmth), and common practice (pitch, strong wort);
/// the steps are working values.
double fusel_level(TemperatureDifference above_range, double pitch_doublings,
                   SpecificGravity original_gravity);

}  // namespace entrywise
