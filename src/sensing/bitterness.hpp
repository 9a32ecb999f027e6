#pragma once

#include "quantity/quantities.hpp"
#include "style/perception.hpp"

namespace entrywise {

/// The ratio of bitterness to gravity, in IBU for each gravity point: how hops stand to malt before the
/// tongue has its say. Source: Daniels, Designing Great Beers, 1996.
double bitterness_ratio(Bitterness bitterness, SpecificGravity original_gravity);

/// How bitter a beer tastes, on the intensity scale: nothing without bitter substances, then nearly in
/// proportion to them, flattening out toward the strongest word; the same amount stands out less from much
/// malt, and sourness and roast take a share of what is left. Valid for 0..150 IBU.
/// Sources: nearly straight response over the usual range, Pangborn, Lewis and Yamashita, Journal of the
/// Institute of Brewing 89, 1983; flattening out, Hahn et al., Journal of Agricultural and Food Chemistry 66,
/// 2018. Fitted by tools/fit-perception, which tells the error.
double bitterness_level(const BitternessMap& map, Bitterness bitterness, SpecificGravity original_gravity,
                        double sour, double roast);

/// How malt and bitterness stand to each other, on the balance scale, from their ratio; drier and livelier
/// beer leans to bitterness. Fitted by tools/fit-perception.
double balance_level(const BalanceMap& map, Bitterness bitterness, SpecificGravity original_gravity,
                     Attenuation apparent_attenuation, Carbonation carbonation);

}  // namespace entrywise
