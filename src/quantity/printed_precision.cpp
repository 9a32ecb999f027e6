#include "quantity/printed_precision.hpp"

#include <cmath>

#include "base/number.hpp"

namespace entrywise {

namespace {

/// The decimal nearest to the value: the same double that reading the printed text would give.
template <class Quantity>
Quantity nearest_decimal(Quantity value, double steps_per_unit) {
    return Quantity::from_value(std::round(value.value() * steps_per_unit) / steps_per_unit);
}

}  // namespace

SpecificGravity at_printed_precision(SpecificGravity gravity) {
    return nearest_decimal(gravity, 1000.0);
}

AlcoholByVolume at_printed_precision(AlcoholByVolume alcohol) {
    return nearest_decimal(alcohol, 10.0);
}

Bitterness at_printed_precision(Bitterness bitterness) {
    return nearest_decimal(bitterness, 1.0);
}

Color at_printed_precision(Color color) {
    return nearest_decimal(color, 10.0);
}

std::string range_end_text(double value, int decimals) {
    return decimals == specific_gravity_decimals ? fixed(value, decimals)
                                                 : shortest(rounded(value, decimals));
}

}  // namespace entrywise
