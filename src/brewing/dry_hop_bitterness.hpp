#pragma once

#include <span>

#include "quantity/quantities.hpp"

namespace entrywise {

/// Hops in the finished or fermenting beer, by mass in a volume of beer.
struct DryHopDose {
    Concentration hops;
    Share alpha_acids;
    /// Oxidized alpha acids, by mass of hops. Fresh hops hold about 2 % of their alpha acids as such, 3 % at
    /// a storage index of 0.34 (`usual_humulinones`); pellets hold up to 0.5 % of their mass.
    Share humulinones;
};

/// Humulinones of hops that were stored cold and sealed, from their alpha acids. Source: Maye et al.,
/// Humulinone formation in hops and hop pellets and its implications for dry hopped beers, MBAA Technical
/// Quarterly 53, 2016.
Share usual_humulinones(Share alpha_acids);

/// What dry hopping does to the laboratory's bitterness.
struct DryHopBitterness {
    Concentration humulinones;  ///< in beer
    Concentration alpha_acids;  ///< in beer, not isomerized
    Bitterness gain;            ///< from these two
    Bitterness loss;            ///< of what iso-alpha-acids gave before, as a value at or above zero
    Bitterness change() const { return gain - loss; }
};

/// The effect of all dry hops together on beer that holds these iso-alpha-acids. Humulinones dissolve almost
/// whole, alpha acids to 35 mg/L at most; iso-alpha-acids above 20 mg/L fall with the first 4 g/L of hops and
/// no further. Valid for 0..25 g/L at 0..20 °C over a day or more. Error: 30 % of each term; the loss ± a
/// quarter of itself. Above 40 IBU the laboratory's bitterness of a dry-hopped beer no longer follows taste.
/// Source: Maye et al. 2016 as above; Algazzali & Shellhammer, Bitterness intensity of oxidized hop acids,
/// Journal of the American Society of Brewing Chemists 74, 2016; shares lost: working value.
DryHopBitterness dry_hop_bitterness(std::span<const DryHopDose> doses, Concentration iso_alpha_acids);

}  // namespace entrywise
