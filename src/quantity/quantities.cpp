#include "quantity/quantities.hpp"

namespace entrywise {

Temperature celsius(double degrees) {
    return Temperature::from_value(degrees + ice_point_kelvin);
}

double in_celsius(Temperature temperature) {
    return temperature.value() - ice_point_kelvin;
}

Temperature fahrenheit(double degrees) {
    return celsius((degrees - ice_point_fahrenheit) * fahrenheit_degree.value());
}

double in_fahrenheit(Temperature temperature) {
    return in_celsius(temperature) / fahrenheit_degree.value() + ice_point_fahrenheit;
}

}  // namespace entrywise
