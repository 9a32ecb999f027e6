#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/area.hpp>

#include <vector>

#include "brewing/isomerization.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

using Area = boost::units::quantity<boost::units::si::area>;

/// A time at one temperature.
struct TemperatureStep {
    Duration time;
    Temperature temperature;
};

/// How fast a kettle cools by itself, with the flame out, from the surface of the wort and the opening above
/// it (a lid makes the opening small) and the volume. Valid for 3..40 L in open or covered pots at room
/// temperature; temperatures then within 0.3 °C (33 conditions). Source: Hosom, Predicting wort temperature
/// after flameout, web report, 2015.
Rate natural_cooling_rate(Area surface, Area opening, Volume volume);

/// The temperature of wort this long after flame-out at 100 °C. Source as above.
Temperature naturally_cooled(Duration since_flame_out, Rate cooling);

/// Natural cooling from one temperature to a lower one as steps of equal fall (2 °C or less), each as long as
/// the fall takes and at its middle temperature. Below 65 °C hop acids hardly change. Empty if there is
/// nothing to fall; the wort never falls to 46.4 °C in this model, so `to` must be above 47 °C, and `from` at
/// most 100.1 °C: values beyond are taken as these.
std::vector<TemperatureStep> natural_cooling_steps(Temperature from, Temperature to, Rate cooling);

}  // namespace entrywise
