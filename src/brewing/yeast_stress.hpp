#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// What a strong wort takes from the apparent attenuation, as a value at or below zero: 1 point for every
/// 0.010 of gravity above 1.080. Valid to 1.140. Source: working value.
Attenuation yeast_stress(SpecificGravity original_gravity);

}  // namespace entrywise
