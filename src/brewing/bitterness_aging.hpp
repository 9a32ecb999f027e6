#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Share of the first bitterness (one week after the start of fermentation or later counts as week zero) that
/// beer made at home still reads after this time at cellar to room temperature. Valid to 16 weeks; it tends
/// to 0.67. Source: Hosom, web report on the aging of bitterness, 2015..2020.
Share bitterness_left_in_home_made_beer(Duration age);

/// The same for filtered, bottled beer at room temperature: 14 % less after 8 months, at a constant rate.
/// Valid to a year. Source: Forster, storage of beer bitterness, 2004.
Share bitterness_left_in_bottled_beer(Duration age);

}  // namespace entrywise
