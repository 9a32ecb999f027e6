#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "sensing/profile.hpp"

namespace entrywise {

/// What a trained judge with this palate senses of the beer. The error of each map from numbers to levels is
/// drawn too, one input an attribute, so that a level carries both what is uncertain of the beer and what is
/// uncertain of the tongue. `deviates` must be those the beer was brewed with.
Profile sense(const Beer& beer, const Perception& perception, Deviates& deviates);

}  // namespace entrywise
