#include "brewing/bittering.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "base/number.hpp"
#include "brewing/bitterness_ceiling.hpp"
#include "brewing/bitterness_of_utilization.hpp"
#include "brewing/chill.hpp"
#include "brewing/dry_hop_bitterness.hpp"
#include "brewing/hot_side.hpp"
#include "brewing/ingredient_line.hpp"
#include "brewing/kettle_bitterness.hpp"
#include "brewing/measured.hpp"
#include "brewing/tasted_bitterness.hpp"
#include "brewing/tracing.hpp"
#include "brewing/utilization_garetz.hpp"
#include "brewing/utilization_rager.hpp"
#include "brewing/utilization_tinseth.hpp"

namespace entrywise {

namespace {

/// Iso-alpha-acids that survive to the glass: 50 %, with a spread that leaves a plain boil about 20 %
/// uncertain (standard deviation), as laboratory values scatter about the chain (Hosom, web reports,
/// 2015..2020).
constexpr Uncertain<Share> survival{50.0 * percent, 13.0 * percent};
constexpr Uncertain<Concentration> solubility{260.0 * milligram_per_liter, 40.0 * milligram_per_liter};

/// Oxidized acids vary with the age of the hops: a factor, eight in ten within half (working value).
constexpr Uncertain<Share> oxidation_factor{100.0 * percent, 50.0 * percent};

/// What beer holds at most, as `bitterness_ceiling.hpp` tells.
constexpr Uncertain<Bitterness> ceiling{100.0 * ibu, 15.0 * ibu};

/// The terms of dry hopping are good to 30 % (Maye et al. 2016, as in `dry_hop_bitterness.hpp`).
constexpr Uncertain<Share> dry_hop_factor{100.0 * percent, 38.0 * percent};

/// Alpha acids of mash hops that go on to the kettle: the rest stays with the spent grain. 9 % against 44 %
/// of wort utilization (Justus, Tracking IBU through the brewing process, MBAA Technical Quarterly 55, 2018).
constexpr double mash_hop_share = 0.2;

/// Hops lie in the bag for some months, and bales differ: the label's alpha acids hold to about 10 % at best
/// (common practice of hop merchants; alpha acids inside one bale differ by 15 to 20 %).
constexpr double least_alpha_spread = 0.08;

Uncertain<Share> alpha_in_use(const HopAddition& addition) {
    const Uncertain<Share>& alpha = addition.hop.alpha;
    return {alpha.middle, std::max(alpha.half_width, least_alpha_spread * alpha.middle)};
}

/// One lot of hops varies as one, however often it is added.
std::string lot_of(const HopAddition& addition) {
    return "alpha acids of " + addition.hop.name + " " + shortest(in(addition.hop.alpha.middle, percent));
}

struct DrawnHops {
    std::vector<Estimate<Share>> alpha;
    Estimate<Share> survival;
    Estimate<Concentration> solubility;
    Estimate<Share> oxidation;
    Estimate<Share> dry_hopping;
    Estimate<Bitterness> ceiling;
    Estimate<Duration> time_to_cool;
};

DrawnHops draw_hops(const Process& process, Deviates& deviates) {
    DrawnHops drawn;
    for (const HopAddition& addition : process.hops) {
        drawn.alpha.push_back(
            deviates.draw(lot_of(addition), alpha_in_use(addition), 0.0 * percent, 60.0 * percent));
    }
    drawn.survival = deviates.draw("survival of iso-alpha-acids", survival, 15.0 * percent, 90.0 * percent);
    drawn.solubility = deviates.draw("solubility of alpha acids", solubility, 150.0 * milligram_per_liter,
                                     400.0 * milligram_per_liter);
    drawn.oxidation = deviates.draw("oxidized hop acids", oxidation_factor, 0.0 * percent, 300.0 * percent);
    drawn.dry_hopping = deviates.draw("dry hop bitterness", dry_hop_factor, 0.0 * percent, 300.0 * percent);
    drawn.ceiling = deviates.draw("ceiling of bitterness", ceiling, 60.0 * ibu, 160.0 * ibu);
    drawn.time_to_cool = deviates.draw("time to cool", process.hot_after_boil, 1.0 * minute, 60.0 * minute);
    return drawn;
}

bool is_dry_hop(const HopAddition& addition) {
    return addition.use == HopUse::dry_hop;
}

/// The kettle's hops, in the order of the process, with what their labels say.
std::vector<KettleDose> kettle_doses(const Process& process, const HotSchedule& schedule) {
    std::vector<KettleDose> doses;
    for (std::size_t hop = 0; hop < process.hops.size(); ++hop) {
        const HopAddition& addition = process.hops[hop];
        if (!is_dry_hop(addition)) {
            const Concentration alpha = in(addition.hop.alpha.middle, whole) * addition.mass / (1.0 * liter);
            const HopMoment& moment = schedule.moments[hop];
            doses.push_back({alpha, addition.form, moment.boil, moment.joins_at_step});
        }
    }
    return doses;
}

/// Bitterness of one draw: of the whole, and of each addition. Dry hops share what they change by the alpha
/// acids that each brings; malt's own reading belongs to no addition.
struct DrawnBitterness {
    Bitterness sum;
    Bitterness tasted;
    std::vector<Bitterness> additions;
};

Chill chill_of(const HotSchedule& schedule, const Estimate<Duration>& time_to_cool) {
    return time_to_cool.count() == 1 ? Chill(schedule, time_to_cool[0]) : Chill(schedule);
}

/// Works out the draws of one recipe, one after the other.
class BitternessOfDraws {
  public:
    BitternessOfDraws(const Process& process, const DrawnHops& drawn, const Wort& wort)
        : process_(process),
          drawn_(drawn),
          wort_(wort),
          schedule_(hot_schedule(process)),
          chill_(chill_of(schedule_, drawn.time_to_cool)),
          kinetics_({.boiling = boiling_temperature(), .after_boil = schedule_.stands}),
          kettle_(kettle_doses(process, schedule_), kinetics_) {
        result_.additions.resize(process.hops.size());
    }

    /// The reference stays good until the next call.
    const DrawnBitterness& of(std::size_t draw) {
        kinetics_.follow_with(chill_.over(drawn_.time_to_cool[draw]));
        set_doses(draw);
        const KettleBitterness& kettle = kettle_.bitterness(kinetics_, model_of(draw));
        const DryHopBitterness dry = dry_hop_bitterness(dry_doses_, kettle.iso_alpha_acids_in_beer);
        const double dry_factor = in(drawn_.dry_hopping[draw], whole);
        const Bitterness change = dry_factor * dry.change();
        const Bitterness malt = malt_bitterness(wort_.original_gravity.total[draw]);
        const Bitterness of_all = std::max(kettle.hops + change + malt, 0.0 * ibu);
        result_.sum = held_in_beer(of_all, drawn_.ceiling[draw]);
        const double held = of_all > 0.0 * ibu ? in(result_.sum, of_all) : 1.0;
        share_out(kettle, change, held);
        const BitternessRead read{kettle.hops - kettle.of_others - dry_factor * dry.loss,
                                  kettle.of_others + dry_factor * dry.gain};
        result_.tasted = held * std::max(tasted_bitterness(read), 0.0 * ibu);
        return result_;
    }

  private:
    KettleModel model_of(std::size_t draw) const {
        KettleModel model;
        model.survival = drawn_.survival[draw];
        model.solubility = drawn_.solubility[draw];
        model.other_absorbers_of_pellets *= in(drawn_.oxidation[draw], whole);
        model.other_absorbers_of_whole_hops *= in(drawn_.oxidation[draw], whole);
        return model;
    }

    void set_doses(std::size_t draw) {
        dry_doses_.clear();
        std::size_t next_kettle = 0;
        for (std::size_t hop = 0; hop < process_.hops.size(); ++hop) {
            const HopAddition& addition = process_.hops[hop];
            const Share alpha = drawn_.alpha[hop][draw];
            if (is_dry_hop(addition)) {
                dry_doses_.push_back({addition.mass / wort_.volume[draw], alpha, usual_humulinones(alpha)});
            } else {
                const double passes_on = addition.use == HopUse::mash ? mash_hop_share : 1.0;
                kettle_.set_alpha_acids(
                    next_kettle++, passes_on * in(alpha, whole) * addition.mass / wort_.kettle_volume[draw]);
            }
        }
    }

    void share_out(const KettleBitterness& kettle, Bitterness change, double held) {
        Concentration dry_alpha;
        for (const DryHopDose& dose : dry_doses_) {
            dry_alpha += in(dose.alpha_acids, whole) * dose.hops;
        }
        std::size_t next_kettle = 0;
        std::size_t next_dry = 0;
        for (std::size_t hop = 0; hop < process_.hops.size(); ++hop) {
            if (is_dry_hop(process_.hops[hop])) {
                const DryHopDose& dose = dry_doses_[next_dry++];
                const Concentration alpha = in(dose.alpha_acids, whole) * dose.hops;
                const double share = dry_alpha > Concentration() ? in(alpha, dry_alpha) : 0.0;
                result_.additions[hop] = held * share * change;
            } else {
                result_.additions[hop] = held * kettle.doses[next_kettle++].contribution;
            }
        }
    }

    const Process& process_;
    const DrawnHops& drawn_;
    const Wort& wort_;
    HotSchedule schedule_;
    Chill chill_;
    HotSideKinetics kinetics_;
    KettleHops kettle_;
    std::vector<DryHopDose> dry_doses_;
    DrawnBitterness result_;
};

}  // namespace

BitterBeer bittering(const Process& process, const Wort& wort, const Measured& measured, Deviates& deviates) {
    const DrawnHops drawn = draw_hops(process, deviates);
    BitternessOfDraws bitterness_of_draws(process, drawn, wort);
    std::vector<std::vector<Bitterness>> by_addition(process.hops.size());
    std::vector<Bitterness> sums;
    std::vector<Bitterness> tasted;
    for (std::vector<Bitterness>& draws : by_addition) {
        draws.reserve(deviates.draws());
    }
    sums.reserve(deviates.draws());
    tasted.reserve(deviates.draws());
    for (std::size_t draw = 0; draw < deviates.draws(); ++draw) {
        const DrawnBitterness& bitterness = bitterness_of_draws.of(draw);
        for (std::size_t hop = 0; hop < by_addition.size(); ++hop) {
            by_addition[hop].push_back(bitterness.additions[hop]);
        }
        sums.push_back(bitterness.sum);
        tasted.push_back(bitterness.tasted);
    }
    std::vector<Part<Bitterness>> parts;
    for (std::size_t hop = 0; hop < by_addition.size(); ++hop) {
        parts.push_back({line_of(process.hops[hop]), process.hops[hop].position,
                         Estimate<Bitterness>(std::move(by_addition[hop]))});
    }
    const Estimate<Bitterness> read(std::move(sums));
    const Estimate<Bitterness> taste(std::move(tasted));
    if (!measured.bitterness) {
        return {{read, shares_of(parts)}, taste};
    }
    const auto as_measured = draw_measured("measured bitterness", *measured.bitterness, deviates);
    const auto in_step = [](Bitterness from_hops, Bitterness worked_out, Bitterness found) {
        return worked_out > 0.0 * ibu ? in(from_hops, worked_out) * found : found;
    };
    return {{as_measured, shares_of(parts)}, lift(in_step, taste, read, as_measured)};
}

OtherBitterness other_bitterness(const Process& process, const Wort& wort) {
    const HotSchedule schedule = hot_schedule(process);
    const Volume kettle = wort.kettle_volume.median();
    const SpecificGravity gravity = wort.boil_gravity.median();
    OtherBitterness result;
    for (std::size_t hop = 0; hop < process.hops.size(); ++hop) {
        const HopAddition& addition = process.hops[hop];
        if (is_dry_hop(addition)) {
            continue;
        }
        const Concentration alpha = in(addition.hop.alpha.middle, whole) * addition.mass / kettle;
        const Duration boil = schedule.moments[hop].boil;
        result.tinseth += bitterness_of_utilization(alpha, tinseth_utilization(boil, gravity));
        result.rager += bitterness_of_utilization(alpha, rager_utilization(boil, gravity));
        result.garetz += garetz_bitterness(alpha, boil, {.boil_gravity = gravity});
    }
    return result;
}

}  // namespace entrywise
