#include "quantity/quantities.hpp"

namespace entrywise {

namespace {
/// The ice point on the kelvin scale (BIPM, The International System of Units, 9th edition, 2019).
constexpr double ice_point_kelvin = 273.15;
}  // namespace

Temperature celsius(double degrees) {
    return Temperature::from_value(degrees + ice_point_kelvin);
}

double in_celsius(Temperature temperature) {
    return temperature.value() - ice_point_kelvin;
}

}  // namespace entrywise
