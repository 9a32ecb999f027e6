#pragma once

#include "brewing/process.hpp"
#include "brewing/wort.hpp"
#include "quantity/estimate.hpp"

namespace entrywise {

/// Sourness of added acid on the intensity scale: very low at the flavor threshold of lactic acid, 0.4 g/L,
/// and a step for each doubling (Meilgaard, MBAA Technical Quarterly 12, 1975, from memory; that doubling the
/// acid does not double the sourness: Neta, Johanningsmeier and McFeeters, Journal of Food Science 72, 2007,
/// from memory; the step is a working value).
double sourness_of_acid(Concentration lactic_acid);

/// Acid that the extras of a recipe bring and that is tasted, as lactic acid: syrup of 88 %, dry acids as
/// they are. Phosphoric acid is not tasted; what goes into the mash sets its pH first.
Estimate<Concentration> added_acid(const Process& process, const Wort& wort);

}  // namespace entrywise
