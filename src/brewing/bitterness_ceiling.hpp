#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// What a beer can hold of the bitterness that its hops would give if every addition counted in full. Under
/// 50 IBU next to all of it; toward a ceiling less and less, since bitter acids leave again with break, yeast
/// and foam as they crowd the wort. Never falls with more hops. The ceiling is uncertain by about 15 IBU.
/// Source: common practice: laboratories seldom find more than 100 IBU however much is added; formulas
/// without a ceiling read up to 70 IBU high on ales measured at 20 to 70 (Hosom, web reports, 2015..2020).
/// How it bends is a working value.
Bitterness held_in_beer(Bitterness of_all_hops, Bitterness ceiling = 100.0 * ibu);

}  // namespace entrywise
