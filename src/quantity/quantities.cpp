#include "quantity/quantities.hpp"

namespace entrywise {

Temperature celsius(double degrees) {
    return Temperature::from_value(degrees + ice_point_kelvin);
}

double in_celsius(Temperature temperature) {
    return temperature.value() - ice_point_kelvin;
}

}  // namespace entrywise
