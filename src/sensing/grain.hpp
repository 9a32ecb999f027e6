#pragma once

#include "quantity/quantities.hpp"
#include "style/perception.hpp"

namespace entrywise {

/// How rich the beer is in malt for its strength: grams of pale ale malt that taste as malty, over the grams
/// of it that would give this original extract, and what caramel, toast and roast add to malt as a whole, of
/// which `specialty` is the sum of levels. One for pale ale malt, less with sugar and maize, two and more
/// with Munich malt. The part of specialty malts is a working value.
double malt_richness(Concentration malt, Extract original_extract, SpecificGravity original_gravity,
                     double specialty);

/// Malt character on the intensity scale: more with what is left of the extract, and with richer malts; hops
/// and acid cover it. Fitted by tools/fit-perception.
double malt_level(const MaltMap& map, Extract real_extract, double richness, double bitterness_ratio,
                  double sour);

// What else grain smells and tastes of, each on the intensity scale, from the grams per liter of the
// reference ingredient that taste as strong (see `Contribution`). Roast and caramel have fitted curves
// (tools/fit-perception); the curves of toast and smoke are working values, after the shares at which brewing
// texts call a flavor low or strong, with a standard error of about three quarters of a step.

double roast_level(SaturationCurve curve, Concentration roast);
double caramel_level(SaturationCurve curve, Concentration caramel);
double toast_level(Concentration toast);
double smoke_level(Concentration smoke);

}  // namespace entrywise
