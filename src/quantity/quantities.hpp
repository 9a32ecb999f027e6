#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/mass.hpp>
#include <boost/units/systems/si/mass_density.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/volume.hpp>

#include "quantity/scales.hpp"

namespace entrywise {

// Dimensions from the SI. Inside, a quantity is kept in SI units; `mass / gram` reads it out in another.
using Mass = boost::units::quantity<boost::units::si::mass>;
using Volume = boost::units::quantity<boost::units::si::volume>;
using Duration = boost::units::quantity<boost::units::si::time>;
using Concentration = boost::units::quantity<boost::units::si::mass_density>;
using EvaporationRate = boost::units::divide_typeof_helper<Volume, Duration>::type;
using OilContent = boost::units::divide_typeof_helper<Volume, Mass>::type;

/// A reading of a thermometer. A difference of two readings is a `TemperatureDifference`; the two do not mix.
using Temperature = boost::units::quantity<boost::units::absolute<boost::units::si::temperature>>;
using TemperatureDifference = boost::units::quantity<boost::units::si::temperature>;

/// Density of wort or beer over that of water, both at 20 °C.
using SpecificGravity = scales::quantity_on<scales::gravity_dimension, 9001>;
/// Degrees Plato: grams of extract in 100 g of wort or beer.
using Extract = scales::quantity_on<scales::extract_dimension, 9002>;
/// Percent of alcohol by volume at 20 °C.
using AlcoholByVolume = scales::quantity_on<scales::alcohol_dimension, 9003>;
/// Degree of fermentation as a fraction. Apparent or real is said by the name of the variable.
using Attenuation = scales::quantity_on<scales::attenuation_dimension, 9004>;
/// International Bitterness Units.
using Bitterness = scales::quantity_on<scales::bitterness_dimension, 9005>;
/// Color of beer or wort in SRM.
using Color = scales::quantity_on<scales::beer_color_dimension, 9006>;
/// Color of a malt or sugar in degrees Lovibond.
using MaltColor = scales::quantity_on<scales::malt_color_dimension, 9007>;
/// Volumes of carbon dioxide, measured at 0 °C and one atmosphere, in one volume of beer.
using Carbonation = scales::quantity_on<scales::carbonation_dimension, 9008>;
/// A share of a whole as a fraction: alpha acids in hops, moisture in malt, brewhouse efficiency.
using Share = scales::quantity_on<scales::share_dimension, 9009>;
/// Million cells of yeast for each milliliter of wort and degree Plato.
using PitchRate = scales::quantity_on<scales::pitch_rate_dimension, 9010>;

// Units to write quantities with: `30.0 * gram`. The US measures are those of NIST Handbook 44, appendix C.
inline constexpr Mass kilogram = Mass::from_value(1.0);
inline constexpr Mass gram = Mass::from_value(1e-3);
inline constexpr Mass milligram = Mass::from_value(1e-6);
inline constexpr Mass pound = Mass::from_value(0.45359237);
inline constexpr Mass ounce = Mass::from_value(0.028349523125);
inline constexpr Volume liter = Volume::from_value(1e-3);
inline constexpr Volume milliliter = Volume::from_value(1e-6);
inline constexpr Volume hectoliter = Volume::from_value(0.1);
inline constexpr Volume gallon = Volume::from_value(3.785411784e-3);
inline constexpr Duration second = Duration::from_value(1.0);
inline constexpr Duration minute = Duration::from_value(60.0);
inline constexpr Duration hour = Duration::from_value(3600.0);
inline constexpr Duration day = Duration::from_value(86400.0);
inline constexpr Duration week = Duration::from_value(604800.0);
inline constexpr TemperatureDifference kelvin = TemperatureDifference::from_value(1.0);
inline constexpr Concentration gram_per_liter = Concentration::from_value(1.0);
inline constexpr Concentration milligram_per_liter = Concentration::from_value(1e-3);
inline constexpr EvaporationRate liter_per_hour = EvaporationRate::from_value(1e-3 / 3600.0);
inline constexpr OilContent milliliter_per_100_gram = OilContent::from_value(1e-5);
inline constexpr SpecificGravity specific_gravity = SpecificGravity::from_value(1.0);
inline constexpr Extract plato = Extract::from_value(1.0);
inline constexpr AlcoholByVolume percent_by_volume = AlcoholByVolume::from_value(1.0);
inline constexpr Attenuation fully_attenuated = Attenuation::from_value(1.0);
inline constexpr Bitterness ibu = Bitterness::from_value(1.0);
inline constexpr Color srm = Color::from_value(1.0);
inline constexpr MaltColor lovibond = MaltColor::from_value(1.0);
inline constexpr Carbonation volume_of_co2 = Carbonation::from_value(1.0);
inline constexpr Share whole = Share::from_value(1.0);
inline constexpr Share percent = Share::from_value(0.01);
inline constexpr PitchRate million_per_milliliter_plato = PitchRate::from_value(1.0);

/// How many of a unit a quantity is, as the bare number that the body of a formula works with.
template <class Quantity>
constexpr double in(Quantity quantity, Quantity unit) {
    return quantity / unit;
}

/// The ice point on the kelvin scale (BIPM, The International System of Units, 9th edition, 2019).
inline constexpr double ice_point_kelvin = 273.15;

/// A thermometer reading from degrees Celsius, and back.
Temperature celsius(double degrees);
double in_celsius(Temperature temperature);

/// The Fahrenheit degree, and the ice point on that scale (NIST Special Publication 811, Guide for the Use of
/// the International System of Units, 2008, appendix B).
inline constexpr TemperatureDifference fahrenheit_degree = TemperatureDifference::from_value(1.0 / 1.8);
inline constexpr double ice_point_fahrenheit = 32.0;

/// A thermometer reading from degrees Fahrenheit, and back.
Temperature fahrenheit(double degrees);
double in_fahrenheit(Temperature temperature);

/// What two quantities of a kind differ by: the kind itself, but for thermometer readings.
template <class Quantity>
using DifferenceOf = decltype(Quantity() - Quantity());

/// A quantity that is known within limits: about eight in ten values lie within `half_width` of the middle.
template <class Quantity>
struct Uncertain {
    Quantity middle;
    DifferenceOf<Quantity> half_width;
};

/// A span with ends of the same kind, both included.
template <class Quantity>
struct Span {
    Quantity low;
    Quantity high;
};

}  // namespace entrywise
