#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

// How well a laboratory can know the bitterness of a beer. No prediction can be checked more closely.
// Valid for 5..60 IBU. Source: MEBAK, Collected brewing analysis methods, bitterness units by the method of
// the European Brewery Convention, which state the limits that 95 % of pairs of results keep.

/// Standard deviation of a laboratory's results on one beer; never below zero.
Bitterness laboratory_repeatability(Bitterness mean);

/// Standard deviation of single results of different laboratories on one beer.
Bitterness laboratory_reproducibility(Bitterness mean);

}  // namespace entrywise
