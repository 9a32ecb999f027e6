#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

// Hop aroma and hop flavor on the intensity scale, from the dry-hop equivalent that reaches the glass (grams
// per liter of hops with 1.5 mL of oil in 100 g). Dose and response are not in proportion: Lafontaine and
// Shellhammer, Impact of static dry-hopping rate on the sensory and analytical profiles of beer, Journal of
// the Institute of Brewing 124, 2018; the constants are working values. Standard error about one step.

double hop_aroma_level(Concentration dry_hop_equivalent);
double hop_flavor_level(Concentration dry_hop_equivalent);

}  // namespace entrywise
