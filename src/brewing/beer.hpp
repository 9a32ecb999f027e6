#pragma once

#include <string>
#include <vector>

#include "base/place.hpp"
#include "quantity/estimate.hpp"
#include "quantity/quantities.hpp"
#include "recipe/ingredients.hpp"

namespace entrywise {

/// The part of something that comes from one line of the recipe. Shares of one thing add up to at most one;
/// what is missing comes from elsewhere, such as the yeast.
struct SourceShare {
    std::string ingredient;
    Position position;
    double share = 0.0;
};

/// An estimate together with the ingredients it comes from, largest share first.
template <class Value>
struct Traced {
    Estimate<Value> total;
    std::vector<SourceShare> sources;
};

/// What the beer carries that a judge will smell, see and taste. Concentrations of grain flavors are told as
/// so many grams per liter of the reference ingredient (see `Contribution`); hop oil as milliliters per
/// hectoliter that reach the glass; levels run on the sensory scale from 0 to 7.
struct Drivers {
    Traced<Concentration> malt;
    Traced<Concentration> toast;
    Traced<Concentration> caramel;
    Traced<Concentration> roast;
    Traced<Concentration> smoke;
    Traced<Concentration> acid;
    Traced<Concentration> grain_body;
    Traced<Concentration> grain_head;
    Traced<Concentration> grain_haze;
    Traced<Concentration> dms_precursor;
    Traced<Concentration> lactose;
    Traced<Concentration>
        hop_aroma;  ///< grams per liter of a dry hop with 1.5 mL oil in 100 g that smell the same
    Traced<Concentration> hop_flavor;  ///< the same for the hop flavor on the palate
    Traced<Concentration> dry_hops;    ///< pellets or cones on the cold side, as they are
    Traced<Concentration> spice;       ///< as coriander
    Traced<Concentration> salt;        ///< table salt
    Estimate<double> ester;
    Estimate<double> phenol;
    Estimate<double> diacetyl;
    Estimate<double> sulfur;
    Estimate<double> sour;
    Estimate<double> funk;
    Estimate<double> fusel;         ///< steps that higher alcohols add to warmth and alcohol
    Estimate<double> dms;           ///< in multiples of the flavor threshold
    double adjunct_share = 0.0;     ///< extract from sugar, rice and maize over all extract
    double wheat_like_share = 0.0;  ///< wheat, oats, rye and flaked barley in the grist, by mass
    bool nitrogen = false;
    bool filtered = false;
    bool fined = false;
    bool fruit_or_wood = false;  ///< fruit, wood, coffee and the like, which the numbers say little of
    double cold_weeks = 0.0;
    Flocculation flocculation = Flocculation::medium;
    bool haze_positive = false;
};

/// Bitterness by other published formulas, medians, shown beside the default.
struct OtherBitterness {
    Bitterness tinseth;
    Bitterness rager;
    Bitterness garetz;
};

/// What a recipe makes. Every number is an estimate; draws of the same index belong together.
struct Beer {
    Traced<SpecificGravity> original_gravity;
    Estimate<SpecificGravity> final_gravity;
    Estimate<Extract> original_extract;
    Estimate<Extract> apparent_extract;
    Estimate<Extract> real_extract;
    Estimate<Attenuation> apparent_attenuation;
    Estimate<AlcoholByVolume> alcohol;
    Traced<Bitterness> bitterness;           ///< as the laboratory reads it
    Estimate<Bitterness> tasted_bitterness;  ///< see `tasted_bitterness.hpp`
    OtherBitterness other_bitterness;
    Traced<Color> color;
    Estimate<Carbonation> carbonation;
    bool carbonation_is_assumed = false;  ///< the recipe says nothing of it
    Drivers drivers;
    std::vector<std::string>
        assumptions;  ///< what the recipe leaves open and the common default taken for it
};

}  // namespace entrywise
