#pragma once

#include <string>

#include "quantity/quantities.hpp"

namespace entrywise {

// How many decimals a quantity is printed with. Verdicts are decided on the value as printed, so that no
// report says that 1.056 lies above 1.056. Half a step beyond what a brewer's instruments tell, and as guides
// print.

inline constexpr int specific_gravity_decimals = 3;
inline constexpr int extract_decimals = 1;
inline constexpr int alcohol_decimals = 1;
inline constexpr int attenuation_percent_decimals = 0;
inline constexpr int bitterness_decimals = 0;
inline constexpr int color_decimals = 1;
inline constexpr int carbonation_decimals = 1;

SpecificGravity at_printed_precision(SpecificGravity gravity);
AlcoholByVolume at_printed_precision(AlcoholByVolume alcohol);
Bitterness at_printed_precision(Bitterness bitterness);
Color at_printed_precision(Color color);

/// An end of a range as it is printed: a gravity with all its decimals, another number without zeros at its
/// end.
std::string range_end_text(double value, int decimals);

}  // namespace entrywise
