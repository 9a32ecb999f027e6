#pragma once

#include <boost/units/quantity.hpp>

#include <span>

#include "quantity/quantities.hpp"

namespace entrywise {

/// Volume that a mass of grain holds back.
using Absorption = boost::units::divide_typeof_helper<Volume, Mass>::type;

/// Wort that spent grain holds, of its dry mass: 0.8..1.1 L/kg. Source: common practice.
inline constexpr Absorption grain_absorption = 1.0 * (liter / kilogram);

/// The share of the dissolved extract that well-mixed batch runnings win from the grain, for the volumes run
/// off one after the other, fullest wort first. Falls as the grist grows at fixed volume. Fly sparging wins
/// as much as two to many batches. No runnings win nothing. To be multiplied by the conversion (0.95..1,
/// working value). Source: mass balance of complete mixing.
Share lauter_efficiency(Mass grain, std::span<const Volume> run_offs,
                        Absorption absorption = grain_absorption);

}  // namespace entrywise
