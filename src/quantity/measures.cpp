#include "quantity/measures.hpp"

#include <cmath>
#include <string_view>

#include "base/number.hpp"
#include "quantity/text.hpp"

namespace entrywise {

namespace {

double degrees_of(Temperature temperature, const Measures& measures) {
    return measures.fahrenheit ? in_fahrenheit(temperature) : in_celsius(temperature);
}

Temperature of_degrees(double degrees, const Measures& measures) {
    return measures.fahrenheit ? fahrenheit(degrees) : celsius(degrees);
}

template <class Quantity>
Quantity in_steps(Quantity quantity, Quantity step) {
    return std::round(in(quantity, step)) * step;
}

std::string decimal(double number, std::string_view unit) {
    constexpr int decimals = 2;
    return shortest(rounded(number, decimals)) + ' ' + std::string(unit);
}

std::string whole_degrees(double degrees, const Measures& measures) {
    return fixed(degrees, 0) + (measures.fahrenheit ? " °F" : " °C");
}

}  // namespace

Mass weighable(Mass mass, const Measures& measures) {
    if (measures.pounds) {
        return in_steps(mass,
                        mass < 4.0 * ounce ? 0.05 * ounce : (mass < pound ? 0.25 * ounce : 0.05 * pound));
    }
    return in_steps(mass, mass < 100.0 * gram ? gram : (mass < 2.0 * kilogram ? 10.0 * gram : 50.0 * gram));
}

Temperature settable(Temperature temperature, const Measures& measures) {
    return of_degrees(std::round(degrees_of(temperature, measures)), measures);
}

Volume measurable(Volume volume, const Measures& measures) {
    if (measures.gallons) {
        return in_steps(volume, volume < 2.5 * gallon ? 0.1 * gallon : 0.25 * gallon);
    }
    return in_steps(volume, volume < 10.0 * liter ? 0.1 * liter : 0.5 * liter);
}

std::string told(Mass mass, const Measures& measures) {
    if (!measures.pounds) {
        return to_text(weighable(mass, measures));
    }
    return mass < pound ? decimal(in(mass, ounce), "oz") : decimal(in(mass, pound), "lb");
}

std::string told(Volume volume, const Measures& measures) {
    return measures.gallons ? decimal(in(volume, gallon), "gal") : decimal(in(volume, liter), "L");
}

std::string told(Temperature temperature, const Measures& measures) {
    return whole_degrees(degrees_of(temperature, measures), measures);
}

std::string told(TemperatureDifference difference, const Measures& measures) {
    return whole_degrees(in(difference, measures.fahrenheit ? fahrenheit_degree : kelvin), measures);
}

}  // namespace entrywise
