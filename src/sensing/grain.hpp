#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

// What grain smells and tastes of, each on the intensity scale, from the grams per liter of the reference
// ingredient that taste as strong (see `Contribution`). Doses and words after the shares at which brewing
// texts call a flavor low or strong; saturating curves with two constants each, working values. Standard
// error about three quarters of a step.

double malt_level(Concentration malt);
double toast_level(Concentration toast);
double caramel_level(Concentration caramel);
double roast_level(Concentration roast);
double smoke_level(Concentration smoke);

}  // namespace entrywise
