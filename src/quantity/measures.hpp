#pragma once

#include <string>

#include "quantity/quantities.hpp"

namespace entrywise {

/// The units that a brewer writes a recipe in, and wants to be answered in.
struct Measures {
    bool pounds = false;      ///< and ounces; else kilograms and grams
    bool fahrenheit = false;  ///< else degrees Celsius
    bool gallons = false;     ///< of the US; else liters

    friend bool operator==(const Measures&, const Measures&) = default;
};

/// An amount as it is weighed: whole grams below 100 g, tens below 2 kg, and twentieths of a kilogram above;
/// twentieths of an ounce below 4 oz, quarters below a pound, and twentieths of a pound above.
Mass weighable(Mass mass, const Measures& measures);

/// A temperature as it is set: in whole degrees.
Temperature settable(Temperature temperature, const Measures& measures);

/// A volume as it is measured out: half liters from 10 L on, tenths below; quarts from 2.5 gal on, tenths of
/// a gallon below.
Volume measurable(Volume volume, const Measures& measures);

// Amounts as a brewer reads them.

std::string told(Mass mass, const Measures& measures);      ///< `300 g`, `5.2 kg`, `1.25 oz`, `10.5 lb`
std::string told(Volume volume, const Measures& measures);  ///< `20 L`, `5.25 gal`
std::string told(Temperature temperature, const Measures& measures);  ///< `67 °C`, `152 °F`
/// What two temperatures differ by: `2 °C`, `4 °F`.
std::string told(TemperatureDifference difference, const Measures& measures);

}  // namespace entrywise
