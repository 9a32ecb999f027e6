#pragma once

#include "quantity/quantities.hpp"
#include "style/perception.hpp"

namespace entrywise {

/// What decides how full a beer feels.
struct BodyInputs {
    Extract real_extract;
    AlcoholByVolume alcohol;
    double malt_richness = 1.0;  ///< as `malt_richness` tells it
    Concentration grain_body;
    Carbonation carbonation;
    bool nitrogen = false;
};

/// Fullness of body on the body scale, from real extract, raised by malts kilned darker and lowered by sugar
/// and maize, eased by alcohol in strong dry beer, raised by oats, rye, wheat and flaked barley and by
/// nitrogen, thinned by lively carbonation.
/// Sources: extract and dextrins, Krebs et al., 2021, and Ivanova et al., 2023 (alcohol, carbonation,
/// beta-glucan and body); that Munich malts make a beer full is common practice. Fitted by
/// tools/fit-perception; what grain and nitrogen add are working values.
double body_level(const BodyMap& map, const BodyInputs& inputs);

/// What decides how sweet or dry a beer ends.
struct FinishInputs {
    Extract real_extract;
    AlcoholByVolume alcohol;
    Bitterness bitterness;
    Carbonation carbonation;
    Concentration lactose;
    double sour = 0.0;
};

/// Finish on the finish scale. Sugar against carbonation and bitterness after Pangborn, Lewis and Yamashita,
/// Journal of the Institute of Brewing 89, 1983, and Clark et al., Chemosensory Perception 4, 2011. Fitted by
/// tools/fit-perception; the sweetness of lactose beyond its extract is a working value.
double finish_level(const FinishMap& map, const FinishInputs& inputs);

/// Sweetness on the intensity scale, from the finish. Fitted by tools/fit-perception.
double sweetness_level(const SweetnessMap& map, double finish);

/// Carbonation on the intensity scale. Words by volumes are working values set beside published priming
/// tables.
double carbonation_level(Carbonation carbonation);

/// Alcohol in the flavor, in the nose, or as warmth in the mouth, on the intensity scale. Ethanol is the main
/// driver of warming (Clark et al., Chemosensory Perception 4, 2011). Fitted by tools/fit-perception.
double alcohol_level(const AlcoholMap& map, AlcoholByVolume alcohol);

/// Creaminess on the intensity scale, from body grains, nitrogen, carbonation and lactose. Working values.
double creaminess_level(double body, Concentration grain_body, Concentration lactose, Carbonation carbonation,
                        bool nitrogen);

/// Astringency that a recipe brings: much roast, or hop matter on the cold side beyond the dose of best use
/// (4 to 8 g/L: Lafontaine and Shellhammer, Impact of static dry-hopping rate on the sensory and analytical
/// profiles of beer, Journal of the Institute of Brewing 124, 2018). What each gram brings is a working
/// value.
double astringency_level(Concentration roast, Concentration dry_hops);

}  // namespace entrywise
