#pragma once

#include "brewing/beer.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

/// What decides how clear a beer pours.
struct ClarityInputs {
    Concentration grain_haze;  ///< as grams of wheat malt per liter
    Concentration dry_hops;
    Flocculation flocculation = Flocculation::medium;
    bool haze_positive = false;  ///< yeast that keeps dry-hop haze up
    bool filtered = false;
    bool fined = false;
    double cold_weeks = 0.0;
};

/// Clarity on the clarity scale. Yeast decides more than grain (Burns, on haze-positive yeast, 2023); the
/// steps are working values.
double clarity_level(const ClarityInputs& inputs);

/// What foam bears of either before it sinks sooner; adjuncts as a part of the extract.
inline constexpr AlcoholByVolume alcohol_that_foam_bears = 7.0 * percent_by_volume;
inline constexpr double adjuncts_that_foam_bears = 0.15;

/// How much head stands after pouring, and how long it lasts, on the intensity scale. For foam: protein of
/// wheat and flaked barley, iso-alpha-acids, carbonation; against it: alcohol, sugar and unmalted rice or
/// maize (Bamforth, Journal of the Institute of Brewing 110, 2004; Ferreira et al., Journal of Agricultural
/// and Food Chemistry 53, 2005). The steps are working values.
double head_size_level(Carbonation carbonation, Concentration grain_head);
double head_retention_level(Concentration grain_head, Bitterness bitterness, AlcoholByVolume alcohol,
                            double adjunct_share, Carbonation carbonation, double sour);

}  // namespace entrywise
