#include "brewing/dry_hop_bitterness.hpp"

#include <algorithm>

#include "brewing/kettle_bitterness.hpp"

namespace entrywise {

namespace {

/// 90 to 100 % of humulinones pass into beer (Maye et al. 2016).
constexpr double humulinone_transfer = 0.95;

/// Absorbance of humulinones relative to that of iso-alpha-acids (Algazzali & Shellhammer 2016).
constexpr double humulinone_absorbance = 0.9155;

/// A few percent of the alpha acids dissolve (working value), to the most that hazy or heavily hopped beer
/// was seen to hold (Maye et al. 2016).
constexpr double alpha_transfer = 0.03;
constexpr Concentration alpha_solubility = 35.0 * milligram_per_liter;

/// IBU that each mg/L of dissolved alpha acids reads. Working value.
constexpr double alpha_reading = 0.3;

constexpr double share_lost = 0.20;
constexpr Concentration iso_alpha_spared = 20.0 * milligram_per_liter;
constexpr Concentration hops_of_full_loss = 4.0 * gram_per_liter;

}  // namespace

Share usual_humulinones(Share alpha_acids) {
    return 0.02 * alpha_acids;
}

DryHopBitterness dry_hop_bitterness(std::span<const DryHopDose> doses, Concentration iso_alpha_acids) {
    Concentration hops;
    Concentration humulinones_added;
    Concentration alpha_added;
    for (const DryHopDose& dose : doses) {
        hops += dose.hops;
        humulinones_added += dose.hops * dose.humulinones.value();
        alpha_added += dose.hops * dose.alpha_acids.value();
    }
    const Concentration humulinones = humulinone_transfer * humulinones_added;
    const Concentration alpha_acids = std::min(alpha_transfer * alpha_added, alpha_solubility);
    const Bitterness gain = humulinone_absorbance * bitterness_of_iso_alpha_acids(humulinones) +
                            alpha_reading * in(alpha_acids, milligram_per_liter) * ibu;
    const Concentration exposed = std::max(Concentration(), iso_alpha_acids - iso_alpha_spared);
    const double reached = std::min(1.0, in(hops, hops_of_full_loss));
    return {humulinones, alpha_acids, gain, bitterness_of_iso_alpha_acids(share_lost * reached * exposed)};
}

}  // namespace entrywise
