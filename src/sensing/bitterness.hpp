#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// How bitter a beer tastes, on the intensity scale. Rises with bitterness and flattens out: above about 80
/// IBU more is hardly told from very high. Alcohol adds a little, residual extract takes away, roast adds.
/// Valid for 0..150 IBU; the standard error is about half a step.
/// Sources: curved response and the part of alcohol, Hahn et al., Journal of Agricultural and Food Chemistry
/// 66, 2018; sugar against bitterness, Pangborn, Lewis and Yamashita, Journal of the Institute of Brewing 89,
/// 1983; the constants are working values.
double bitterness_level(Bitterness bitterness, AlcoholByVolume alcohol, Extract real_extract,
                        Concentration roast);

/// How malt and bitterness stand to each other, on the balance scale, from the ratio of bitterness to
/// original gravity points, corrected for attenuation. Source of the ratio: Daniels, Designing Great Beers,
/// 1996; the steps are working values.
double balance_level(Bitterness bitterness, SpecificGravity original_gravity,
                     Attenuation apparent_attenuation);

}  // namespace entrywise
