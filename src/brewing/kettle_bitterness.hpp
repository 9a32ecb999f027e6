#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "brewing/isomerization.hpp"
#include "brewing/wort_cooling.hpp"
#include "quantity/quantities.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// Hops added to the hot wort at one moment.
struct KettleDose {
    Concentration alpha_acids;  ///< added, in the cooled wort
    HopForm form = HopForm::pellet;
    Duration boil;                  ///< before its end; zero for hops added at flame-out or later
    std::size_t joins_at_step = 0;  ///< the step after the boil before which hops join that were not boiled
};

/// The boil and what follows it until the wort is cold. A quick chill is no step.
struct HotSide {
    Temperature boiling;
    std::vector<TemperatureStep> after_boil;
};

/// Rates of a hot side, worked out once and then used for every dose and draw that shares it.
class HotSideKinetics {
  public:
    explicit HotSideKinetics(const HotSide& hot_side);

    /// Lets that follow the last step, in place of what followed before.
    void follow_with(const Isomerization& afterwards);

    const RateConstants& boiling() const { return boiling_; }
    /// From the end of the boil to cold wort.
    const Isomerization& after_boil() const { return from_step_.front(); }

    std::size_t steps() const { return step_.size(); }
    /// From a moment to cold wort. Steps past the last make nothing.
    Isomerization from(const KettleDose& dose) const;
    /// Share of dissolved alpha acids that is left from one dose's moment to a later one's.
    double alpha_left_between(const KettleDose& earlier, const KettleDose& later) const;

  private:
    RateConstants boiling_;
    std::vector<Isomerization> step_;
    std::vector<Isomerization> from_step_;
};

/// What brewhouses differ by; the values given are for small ones.
struct KettleModel {
    /// Iso-alpha-acids in cast wort that reach the glass: 0.35..0.65. Break takes 7..35 %, fermentation 5..20
    /// %. Fitted to Hosom, web reports on alpha-acid solubility and hop steeping, 2015..2020.
    Share survival = 0.50 * whole;
    /// Most alpha acids that boiling wort holds in solution. Fitted as above; Maule, Journal of the
    /// Institute of Brewing, 1966, saw loss to the break above 200 mg/L.
    Concentration solubility = 260.0 * milligram_per_liter;
    /// IBU for each mg/L of alpha acids added that oxidized acids and other absorbers give at any
    /// temperature: 6 % oxidize in whole hops and 12 % in pellets by Hosom, web reports on pellets,
    /// 2015..2020.
    double other_absorbers_of_whole_hops = 0.035;
    double other_absorbers_of_pellets = 0.070;
    /// Carbon-dioxide extract holds next to no oxidized acids and polyphenols. Working value.
    double other_absorbers_of_extract = 0.0;
};

/// What one dose gives.
struct DoseBitterness {
    Concentration iso_alpha_acids;  ///< in cast wort
    Bitterness contribution;        ///< in beer, from these and from the other absorbers
    Bitterness of_others;           ///< the part of the other absorbers
};

struct KettleBitterness {
    std::vector<DoseBitterness> doses;  ///< in the order given
    Concentration iso_alpha_acids_in_beer;
    Bitterness hops;       ///< the sum of the contributions
    Bitterness of_others;  ///< the part of the other absorbers
};

/// The hops of one kettle, laid out once, with amounts that may differ from draw to draw.
class KettleHops {
  public:
    KettleHops(std::vector<KettleDose> doses, const HotSideKinetics& kinetics);

    /// The amount of a dose, by the order in which they were given.
    void set_alpha_acids(std::size_t dose, Concentration amount) { doses_[dose].alpha_acids = amount; }

    /// As `kettle_bitterness` of these doses. The reference stays good until the next call.
    const KettleBitterness& bitterness(const HotSideKinetics& kinetics, const KettleModel& model);

  private:
    void add(std::size_t dose, double dissolved, const HotSideKinetics& kinetics, const KettleModel& model);

    std::vector<KettleDose> doses_;
    std::vector<Isomerization> boiled_;  ///< what the boil does to each dose
    std::vector<std::size_t> order_;     ///< of brewing
    std::vector<double> alpha_left_;  ///< in that order: of what was dissolved before, at each dose's moment
    KettleBitterness result_;
};

/// What unhopped beer of this gravity reads: 1..3 IBU. Source: Hosom, web report on bitterness without hops,
/// 2015.
Bitterness malt_bitterness(SpecificGravity original_gravity);

/// IBU that iso-alpha-acids read: 51.2/69.68 for each mg/L. Source: Peacock, The International Bitterness
/// Unit, its creation and what it measures, in: Shellhammer (editor), Hop flavor and aroma, 2009.
Bitterness bitterness_of_iso_alpha_acids(Concentration iso_alpha_acids);

/// Laboratory bitterness of the hops in the hot wort, without the malt's and the dry hops'. Alpha acids
/// isomerize in the boil and all steps after it; those beyond the solubility, less what is still dissolved
/// from earlier doses, are lost to isomerization but still oxidize. Doses of one moment share what dissolves
/// in proportion. The order in which doses are given does not matter. A dose that boils ignores
/// `joins_at_step`. Error: about 20 % (one standard deviation) for plain boils, 30 % for heavy late hopping.
/// Source: Malowicki & Shellhammer 2005 (`isomerization.hpp`), Peacock 2009, and Hosom, web reports,
/// 2015..2020, as named at each value.
KettleBitterness kettle_bitterness(std::span<const KettleDose> doses, const HotSideKinetics& kinetics,
                                   const KettleModel& model = {});

}  // namespace entrywise
