#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/energy.hpp>

#include "quantity/quantities.hpp"

namespace entrywise {

/// Food energy in a volume of beer.
using EnergyContent =
    boost::units::divide_typeof_helper<boost::units::quantity<boost::units::si::energy>, Volume>::type;

/// The thermochemical kilocalorie of 4184 J (NIST Special Publication 811, 2008).
inline constexpr EnergyContent kilocalorie_per_100_milliliter = EnergyContent::from_value(4184.0 / 1e-4);

/// Food energy of beer from its alcohol (share of the mass), real extract and final gravity. Valid for beer
/// of 0..30 °P original extract; ash is taken as 0.1 g in 100 g. Source: Fix, on energy in beer, 1992, after
/// the methods of the American Society of Brewing Chemists and the European Brewery Convention.
EnergyContent energy(Share alcohol_by_weight, Extract real, SpecificGravity final_gravity);

}  // namespace entrywise
