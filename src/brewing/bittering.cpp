#include "brewing/bittering.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "base/number.hpp"
#include "brewing/bitterness_ceiling.hpp"
#include "brewing/bitterness_of_utilization.hpp"
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

/// The kettle's hops of one draw, in the order of the process.
std::vector<KettleDose> kettle_doses(const Process& process, const HotSchedule& schedule,
                                     const DrawnHops& drawn, Volume kettle, std::size_t draw) {
    std::vector<KettleDose> doses;
    for (std::size_t hop = 0; hop < process.hops.size(); ++hop) {
        const HopAddition& addition = process.hops[hop];
        if (is_dry_hop(addition)) {
            continue;
        }
        const double passes_on = addition.use == HopUse::mash ? mash_hop_share : 1.0;
        const Concentration alpha = passes_on * in(drawn.alpha[hop][draw], whole) * addition.mass / kettle;
        const HopMoment& moment = schedule.moments[hop];
        doses.push_back({alpha, addition.form, moment.boil, moment.joins_at_step});
    }
    return doses;
}

std::vector<DryHopDose> dry_hop_doses(const Process& process, const DrawnHops& drawn, Volume beer,
                                      std::size_t draw) {
    std::vector<DryHopDose> doses;
    for (std::size_t hop = 0; hop < process.hops.size(); ++hop) {
        if (is_dry_hop(process.hops[hop])) {
            const Share alpha = drawn.alpha[hop][draw];
            doses.push_back({process.hops[hop].mass / beer, alpha, usual_humulinones(alpha)});
        }
    }
    return doses;
}

/// Bitterness of one draw: of each addition, and the whole. Dry hops share what they change by the alpha
/// acids that each brings; malt's own reading belongs to no addition.
struct DrawnBitterness {
    std::vector<Bitterness> additions;
    Bitterness sum;
    Bitterness tasted;
};

DrawnBitterness bitterness_of_draw(const Process& process, const HotSchedule& schedule,
                                   const DrawnHops& drawn, const Wort& wort, std::size_t draw) {
    const HotSideKinetics kinetics(hot_side(schedule, drawn.time_to_cool[draw]));
    KettleModel model;
    model.survival = drawn.survival[draw];
    model.solubility = drawn.solubility[draw];
    model.other_absorbers_of_pellets *= in(drawn.oxidation[draw], whole);
    model.other_absorbers_of_whole_hops *= in(drawn.oxidation[draw], whole);
    const auto doses = kettle_doses(process, schedule, drawn, wort.kettle_volume[draw], draw);
    const KettleBitterness kettle = kettle_bitterness(doses, kinetics, model);
    const auto dry_doses = dry_hop_doses(process, drawn, wort.volume[draw], draw);
    const DryHopBitterness dry = dry_hop_bitterness(dry_doses, kettle.iso_alpha_acids_in_beer);
    const Bitterness change = in(drawn.dry_hopping[draw], whole) * dry.change();
    Concentration dry_alpha;
    for (const DryHopDose& dose : dry_doses) {
        dry_alpha += in(dose.alpha_acids, whole) * dose.hops;
    }
    DrawnBitterness result;
    std::size_t next_kettle = 0;
    std::size_t next_dry = 0;
    for (const HopAddition& addition : process.hops) {
        if (is_dry_hop(addition)) {
            const DryHopDose& dose = dry_doses[next_dry++];
            const Concentration alpha = in(dose.alpha_acids, whole) * dose.hops;
            const double share = dry_alpha > Concentration() ? in(alpha, dry_alpha) : 0.0;
            result.additions.push_back(share * change);
        } else {
            result.additions.push_back(kettle.doses[next_kettle++].contribution);
        }
    }
    const Bitterness malt = malt_bitterness(wort.original_gravity.total[draw]);
    const Bitterness of_all = std::max(kettle.hops + change + malt, 0.0 * ibu);
    result.sum = held_in_beer(of_all, drawn.ceiling[draw]);
    const double held = of_all > 0.0 * ibu ? in(result.sum, of_all) : 1.0;
    for (Bitterness& addition : result.additions) {
        addition *= held;
    }
    const double dry_factor = in(drawn.dry_hopping[draw], whole);
    const BitternessRead read{kettle.hops - kettle.of_others - dry_factor * dry.loss,
                              kettle.of_others + dry_factor * dry.gain};
    result.tasted = held * std::max(tasted_bitterness(read), 0.0 * ibu);
    return result;
}

}  // namespace

BitterBeer bittering(const Process& process, const Wort& wort, const Measured& measured, Deviates& deviates) {
    const HotSchedule schedule = hot_schedule(process);
    const DrawnHops drawn = draw_hops(process, deviates);
    std::vector<std::vector<Bitterness>> by_addition(process.hops.size());
    std::vector<Bitterness> sums;
    std::vector<Bitterness> tasted;
    for (std::size_t draw = 0; draw < deviates.draws(); ++draw) {
        const DrawnBitterness bitterness = bitterness_of_draw(process, schedule, drawn, wort, draw);
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
