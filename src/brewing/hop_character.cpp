#include "brewing/hop_character.hpp"

#include <cmath>
#include <vector>

#include "brewing/hop_oil.hpp"
#include "brewing/hot_side.hpp"
#include "brewing/ingredient_line.hpp"
#include "brewing/tracing.hpp"

namespace entrywise {

namespace {

constexpr OilContent reference_oil = 1.5 * milliliter_per_100_gram;
constexpr Duration usual_stand = 20.0 * minute;
constexpr double usual_stand_celsius = 85.0;

Concentration all_dry_hops(const Process& process) {
    Concentration sum;
    for (const HopAddition& addition : process.hops) {
        if (addition.use == HopUse::dry_hop) {
            sum += addition.mass / process.volume.middle;
        }
    }
    return sum;
}

/// The part of an addition's oil that is smelled in the glass, and that which is tasted.
struct OilLeft {
    Share smelled;
    Share tasted;
};

OilLeft oil_left(const HopAddition& addition, Duration boil, Concentration dry_hops) {
    switch (addition.use) {
        case HopUse::dry_hop: {
            const Share won = oil_won_by_dry_hop(dry_hops, addition.time.value_or(usual_dry_hop_time));
            return {won, won};
        }
        case HopUse::whirlpool: {
            const Temperature temperature = addition.temperature.value_or(celsius(usual_stand_celsius));
            const Share left = oil_left_after_whirlpool(addition.time.value_or(usual_stand), temperature);
            return {left, left};
        }
        default:
            return {oil_left_after_boil(boil), hop_flavor_left_after_boil(boil)};
    }
}

using Parts = std::vector<Part<Concentration>>;

// Oil counts by its cube root: traditional hops have little oil, but it is richer in what is smelled, and
// between lots oil says little of the strength of the aroma (Vollmer and Shellhammer, Influence of hop oil
// content and composition on hop aroma intensity in dry-hopped beer, Journal of the American Society of
// Brewing Chemists 74, 2016, from memory; the root is a working value).
double strength_of(OilContent oil) {
    return std::cbrt(in(oil, reference_oil));
}

Part<Concentration> part_of(const HopAddition& addition, Share left, const Estimate<double>& strength,
                            const Wort& wort) {
    const Share whole_yield = oil_won_by_dry_hop(0.0 * gram_per_liter, usual_dry_hop_time);
    const double relative = in(left, whole_yield);
    const auto equivalent = [&](double strength_of_lot, Volume volume) -> Concentration {
        return relative * strength_of_lot * addition.mass / volume;
    };
    return {line_of(addition), addition.position, lift(equivalent, strength, wort.volume)};
}

/// What age leaves of the hops in the glass; everything where the recipe gives no dates.
void fade(const Process& process, Deviates& deviates, Drivers& drivers) {
    if (!process.age) {
        return;
    }
    const auto temperature =
        deviates.draw("keeping temperature", process.kept_at, celsius(-2.0), celsius(45.0));
    const auto faded = [age = *process.age](Concentration hops, Temperature kept) -> Concentration {
        return in(hop_oil_left_after_keeping(age, kept), whole) * hops;
    };
    drivers.hop_aroma.total = lift(faded, drivers.hop_aroma.total, temperature);
    drivers.hop_flavor.total = lift(faded, drivers.hop_flavor.total, temperature);
}

}  // namespace

void hop_character(const Process& process, const Wort& wort, Deviates& deviates, Drivers& drivers) {
    const HotSchedule schedule = hot_schedule(process);
    const Concentration dry_hops = all_dry_hops(process);
    Parts smelled;
    Parts tasted;
    Parts on_the_cold_side;
    for (std::size_t hop = 0; hop < process.hops.size(); ++hop) {
        const HopAddition& addition = process.hops[hop];
        const OilLeft left = oil_left(addition, schedule.moments[hop].boil, dry_hops);
        const auto oil = deviates.draw("oil of " + addition.hop.name, addition.hop.oil,
                                       0.0 * milliliter_per_100_gram, 10.0 * milliliter_per_100_gram);
        const Estimate<double> strength = lift(strength_of, oil);
        smelled.push_back(part_of(addition, left.smelled, strength, wort));
        tasted.push_back(part_of(addition, left.tasted, strength, wort));
        if (addition.use == HopUse::dry_hop) {
            const Mass mass = addition.mass;
            const auto dose = [mass](Volume volume) -> Concentration { return mass / volume; };
            on_the_cold_side.push_back({line_of(addition), addition.position, lift(dose, wort.volume)});
        }
    }
    drivers.hop_aroma = traced(smelled, deviates.draws());
    drivers.hop_flavor = traced(tasted, deviates.draws());
    drivers.dry_hops = traced(on_the_cold_side, deviates.draws());
    fade(process, deviates, drivers);
}

}  // namespace entrywise
