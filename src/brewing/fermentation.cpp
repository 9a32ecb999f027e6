#include "brewing/fermentation.hpp"

#include <algorithm>
#include <vector>

#include "brewing/balling.hpp"
#include "brewing/hop_creep.hpp"
#include "brewing/mash_fermentability.hpp"
#include "brewing/measured.hpp"
#include "brewing/yeast_stress.hpp"
#include "quantity/plato.hpp"

namespace entrywise {

namespace {

/// Real over apparent attenuation in beer of usual strength (Balling, Die Gärungschemie, 1865; Cutaia, Reid &
/// Speers 2009 as in `balling.hpp`). Fermentability tables speak of apparent attenuation, sums need the real
/// one.
constexpr double real_over_apparent = 0.8114;

/// Attenuation that makers print of the yeast that the fermentability tables take for granted, a neutral ale
/// yeast: 75 to 82 %. What they print falls short of what their yeast does in wort of modern malt, by 2
/// points and more (Terrill, ale strain trial, 2017; Nilo, Crystal malt fermentability experiment, 2011).
constexpr double reference_attenuation = 0.785;

/// A source whose extract ferments to more than this apparent attenuation is simple sugar, which every yeast
/// takes.
constexpr double simple_sugar_from = 1.1;

/// Steeped without base malt, a grain's dextrins are not worked on by enzymes: 12 points of apparent
/// attenuation less (working value within 10 to 15 points).
constexpr Attenuation loss_without_mash = 0.12 * fully_attenuated;

/// No more than this part of the extract ferments, of sugar alone too: some goes into yeast and acids
/// (working value).
constexpr double most_fermented = 0.97;

/// The brewer's yeast that decides the attenuation: the one that goes furthest.
const YeastClass& leading_yeast(const std::vector<YeastAddition>& yeasts) {
    return std::max_element(yeasts.begin(), yeasts.end(),
                            [](const YeastAddition& first, const YeastAddition& second) {
                                return first.yeast.attenuation.middle < second.yeast.attenuation.middle;
                            })
        ->yeast;
}

bool takes_dextrins(const YeastClass& yeast) {
    return yeast.diastatic || yeast.brettanomyces;
}

/// How the mash moves the fermentability, draw by draw: the shift at the temperature as it really was, with
/// the spread of the curve itself.
Estimate<Attenuation> mash_shift(const Process& process, Deviates& deviates) {
    const std::vector<double>& thermometer = deviates.of("mash temperature");
    const std::vector<double>& curve = deviates.of("mash curve");
    std::vector<Attenuation> shifts;
    shifts.reserve(deviates.draws());
    std::vector<MashRest> rests = process.mash;
    for (std::size_t draw = 0; draw < deviates.draws(); ++draw) {
        for (std::size_t rest = 0; rest < rests.size(); ++rest) {
            rests[rest].temperature =
                process.mash[rest].temperature +
                process.mash_temperature_half_width * (thermometer[draw] / Deviates::eight_in_ten);
        }
        const MashEffect effect = mash_effect(rests);
        shifts.push_back(effect.shift + curve[draw] * effect.standard_deviation);
    }
    return Estimate<Attenuation>(std::move(shifts));
}

/// The real attenuation of one source's extract, draw by draw.
Estimate<Attenuation> source_attenuation(const GristAddition& addition, const Process& process,
                                         const YeastClass& yeast,
                                         const Estimate<Attenuation>& yeast_attenuation,
                                         const Estimate<Attenuation>& shift, Deviates& deviates) {
    const Fermentable& fermentable = addition.fermentable;
    const auto limit = deviates.draw("fermentability of " + fermentable.name, fermentable.fermentability,
                                     0.0 * fully_attenuated, 1.24 * fully_attenuated);
    const bool grain = needs_a_mash(fermentable.kind);
    const bool mashed = grain && process.mashed && addition.use == GristUse::mash;
    const bool simple_sugar = fermentable.fermentability.middle / fully_attenuated > simple_sugar_from;
    const bool undone_by_enzymes = takes_dextrins(yeast) && fermentable.gives.sweet == 0.0;
    const auto attenuation = [=](Attenuation apparent_limit, Attenuation of_yeast, Attenuation moved) {
        if (simple_sugar) {
            return real_over_apparent * apparent_limit;
        }
        if (undone_by_enzymes) {
            return real_over_apparent * of_yeast;
        }
        const Attenuation shifted = mashed ? apparent_limit + moved : apparent_limit;
        const Attenuation reached = grain && !mashed ? shifted - loss_without_mash : shifted;
        const double yeast_factor = in(of_yeast, fully_attenuated) / reference_attenuation;
        return real_over_apparent * yeast_factor * std::max(reached, 0.0 * fully_attenuated);
    };
    return lift(attenuation, limit, yeast_attenuation, shift);
}

/// Real attenuation of the whole wort: the mean of its sources by their extract.
Estimate<Attenuation> real_attenuation_of(const Process& process, const Wort& wort, Deviates& deviates) {
    const YeastClass& yeast = leading_yeast(process.yeasts);
    const auto of_yeast = deviates.draw("attenuation of " + yeast.name, yeast.attenuation,
                                        0.0 * fully_attenuated, 1.1 * fully_attenuated);
    const auto shift = mash_shift(process, deviates);
    std::vector<Mass> fermented(deviates.draws());
    std::vector<Mass> extract(deviates.draws());
    for (std::size_t source = 0; source < wort.extract.size(); ++source) {
        const auto attenuation =
            source_attenuation(process.grist[source], process, yeast, of_yeast, shift, deviates);
        for (std::size_t draw = 0; draw < deviates.draws(); ++draw) {
            const Mass mass = wort.extract[source].amount[draw];
            extract[draw] += mass;
            fermented[draw] += mass * in(attenuation[draw], fully_attenuated);
        }
    }
    std::vector<Attenuation> attenuation;
    attenuation.reserve(deviates.draws());
    for (std::size_t draw = 0; draw < deviates.draws(); ++draw) {
        const bool any = extract[draw] > 0.0 * kilogram;
        const double share = any ? in(fermented[draw], extract[draw]) : 0.0;
        attenuation.push_back(std::clamp(share, 0.0, most_fermented) * fully_attenuated);
    }
    return Estimate<Attenuation>(std::move(attenuation));
}

/// The part of the extract that no enzyme of hops splits: lactose.
Estimate<Share> lactose_of(const Process& process, const Wort& wort, std::size_t draws) {
    std::vector<Share> lactose;
    lactose.reserve(draws);
    for (std::size_t draw = 0; draw < draws; ++draw) {
        Mass all;
        Mass kept;
        for (std::size_t source = 0; source < wort.extract.size(); ++source) {
            const Mass mass = wort.extract[source].amount[draw];
            all += mass;
            kept += process.grist[source].fermentable.gives.sweet > 0.0 ? mass : Mass();
        }
        lactose.push_back(all > Mass() ? in(kept, all) * whole : Share());
    }
    return Estimate<Share>(std::move(lactose));
}

/// Raises the real attenuation by what dry hops on the yeast make fermentable.
Estimate<Attenuation> with_hop_creep(const Estimate<Attenuation>& real, const Process& process,
                                     const Wort& wort, Deviates& deviates) {
    const Share creep = hop_creep(process.hops, process.volume.middle, process.fermentation_temperature);
    if (creep == Share()) {
        return real;
    }
    const auto factor = deviates.draw("hop creep", hop_creep_factor, 0.0 * percent, 250.0 * percent);
    const auto raised = [creep](Attenuation before, Share times, Share lactose) -> Attenuation {
        const double left = in(fully_attenuated - before, fully_attenuated) - in(lactose, whole);
        return before + in(times, whole) * in(creep, whole) * std::max(left, 0.0) * fully_attenuated;
    };
    return lift(raised, real, factor, lactose_of(process, wort, deviates.draws()));
}

/// Lowers the real attenuation by what a strong wort does to the yeast, and to where the alcohol stops it.
Attenuation held_back(Attenuation real, SpecificGravity original_gravity, AlcoholByVolume limit) {
    const Attenuation stressed = real + real_over_apparent * yeast_stress(original_gravity);
    const Extract original = extract_of(original_gravity);
    const Extract apparent = apparent_extract(original, real_extract_after(original, stressed));
    const AlcoholByVolume alcohol = alcohol_by_volume(original_gravity, specific_gravity_of(apparent));
    return alcohol > limit ? in(limit, alcohol) * stressed : stressed;
}

Estimate<Extract> apparent_extract_of(const Process& process, const Wort& wort,
                                      const Estimate<Extract>& original_extract, Deviates& deviates) {
    const AlcoholByVolume stated_limit = leading_yeast(process.yeasts).alcohol_limit;
    const auto limit = deviates.draw("alcohol limit", {stated_limit, 1.0 * percent_by_volume},
                                     1.0 * percent_by_volume, 30.0 * percent_by_volume);
    const auto brewed = real_attenuation_of(process, wort, deviates);
    const auto attenuation =
        lift(held_back, with_hop_creep(brewed, process, wort, deviates), wort.original_gravity.total, limit);
    return lift(
        [](Extract original, Attenuation real) {
            return apparent_extract(original, real_extract_after(original, real));
        },
        original_extract, attenuation);
}

/// Real yeast growth varies from Balling's balance: standard error 0.13 % by volume at 10 °P fermented
/// (worked out from the spread in Cutaia, Reid & Speers 2009).
constexpr Uncertain<AlcoholByVolume> alcohol_formula_error{0.0 * percent_by_volume,
                                                           0.13 * Deviates::eight_in_ten* percent_by_volume};

Estimate<AlcoholByVolume> alcohol_of(const Wort& wort, const Fermented& fermented, const Measured& measured,
                                     Deviates& deviates) {
    if (measured.alcohol) {
        return draw_measured("measured alcohol", *measured.alcohol, deviates);
    }
    const auto error = deviates.draw("alcohol formula", alcohol_formula_error, -1.0 * percent_by_volume,
                                     1.0 * percent_by_volume);
    const auto alcohol = [](SpecificGravity original, SpecificGravity final, AlcoholByVolume off) {
        return std::max(alcohol_by_volume(original, final) + off, 0.0 * percent_by_volume);
    };
    return lift(alcohol, wort.original_gravity.total, fermented.final_gravity, error);
}

}  // namespace

Fermented ferment(const Process& process, const Wort& wort, const Measured& measured, Deviates& deviates) {
    Fermented fermented;
    fermented.original_extract = lift(extract_of, wort.original_gravity.total);
    if (measured.final_gravity) {
        fermented.final_gravity = draw_measured("measured final gravity", *measured.final_gravity, deviates);
        fermented.apparent_extract = lift(extract_of, fermented.final_gravity);
    } else {
        fermented.apparent_extract = apparent_extract_of(process, wort, fermented.original_extract, deviates);
        fermented.final_gravity = lift(specific_gravity_of, fermented.apparent_extract);
    }
    fermented.real_extract = lift(real_extract, fermented.original_extract, fermented.apparent_extract);
    fermented.apparent_attenuation =
        lift(apparent_attenuation, fermented.original_extract, fermented.apparent_extract);
    fermented.alcohol = alcohol_of(wort, fermented, measured, deviates);
    return fermented;
}

}  // namespace entrywise
