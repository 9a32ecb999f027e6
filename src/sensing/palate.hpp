#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Fullness of body on the body scale, from real extract, eased by alcohol in strong dry beer, raised by
/// oats, rye, wheat and flaked barley, thinned by lively carbonation. Standard error about three quarters of
/// a step. Sources: extract and dextrins, Krebs et al., 2021, and Ivanova et al., 2023 (alcohol, carbonation,
/// beta-glucan and body); the steps are working values.
double body_level(Extract real_extract, AlcoholByVolume alcohol, Concentration grain_body,
                  Carbonation carbonation, bool nitrogen);

/// How sweet the beer finishes to the tongue: one index under finish and sweetness, in no unit. Zero is the
/// border from very dry to dry. Working form; sweetness of alcohol and sugar against carbonation and
/// bitterness after Pangborn, Lewis and Yamashita, Journal of the Institute of Brewing 89, 1983, and Clark et
/// al., Chemosensory Perception 4, 2011.
double sweetness_index(Extract real_extract, AlcoholByVolume alcohol, Concentration caramel,
                       Concentration lactose, Bitterness bitterness, Carbonation carbonation, double sour);

/// Finish on the finish scale, from the sweetness index.
double finish_level(double sweetness_index);

/// Sweetness on the intensity scale, from the sweetness index.
double sweetness_level(double sweetness_index);

/// Carbonation on the intensity scale. Words by volumes are working values set beside published priming
/// tables.
double carbonation_level(Carbonation carbonation);

/// Warmth of alcohol in the mouth, and alcohol in the flavor and the nose, on the intensity scale. Ethanol is
/// the main driver of warming (Clark et al., Chemosensory Perception 4, 2011); the steps are working values.
double warmth_level(AlcoholByVolume alcohol, Extract real_extract);
double alcohol_level(AlcoholByVolume alcohol);

/// Creaminess on the intensity scale, from body grains, nitrogen, carbonation and lactose. Working values.
double creaminess_level(double body, Concentration grain_body, Concentration lactose, Carbonation carbonation,
                        bool nitrogen);

/// Astringency that a recipe brings: much roast, much hop matter. Working values.
double astringency_level(Concentration roast, Concentration dry_hops);

}  // namespace entrywise
