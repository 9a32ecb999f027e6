#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/length.hpp>

#include "quantity/quantities.hpp"

namespace entrywise {

using Length = boost::units::quantity<boost::units::si::length>;

// Garetz's reckoning, which counts nothing in the first ten minutes and lowers the rest by gravity, hopping
// rate and altitude. Valid for 0..90 min. Reads low nearly everywhere. Source: Garetz, Using hops, 1994;
// table from memory.

/// Share of alpha acids used, by his table for average yeast, with straight lines between its rows.
Share garetz_utilization(Duration boil);

/// How the brew lowers the utilization of all its hops.
struct GaretzBrew {
    SpecificGravity boil_gravity;
    Share final_over_boil_volume = 1.0 * whole;
    Length altitude = Length::from_value(0.0);
};

/// Bitterness of alpha acids (in the cooled wort) boiled for a time. The hopping-rate factor depends on the
/// bitterness itself; the equation of second degree is solved, so that nothing need be repeated. Hops that
/// share a boil bring it down together: give each its share of their sum.
Bitterness garetz_bitterness(Concentration alpha_acids, Duration boil, const GaretzBrew& brew);

}  // namespace entrywise
