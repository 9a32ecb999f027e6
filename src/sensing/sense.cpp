#include "sensing/sense.hpp"

#include <algorithm>
#include <string>
#include <vector>

#include "sensing/appearance.hpp"
#include "sensing/bitterness.hpp"
#include "sensing/grain.hpp"
#include "sensing/hops.hpp"
#include "sensing/palate.hpp"
#include "sensing/saturation.hpp"

namespace entrywise {

namespace {

/// Standard deviation, in steps, of a map from numbers to a level (working values: what remains when the
/// words of a style guide are read beside its numbers).
double map_error(Attribute attribute) {
    switch (attribute) {
        case Attribute::flavor_bitterness:
        case Attribute::flavor_balance:
        case Attribute::mouthfeel_carbonation:
        case Attribute::mouthfeel_warmth:
        case Attribute::appearance_clarity:
            return 0.4;
        case Attribute::aroma_hop:
        case Attribute::flavor_hop:
            return 0.7;
        default:
            return 0.5;
    }
}

double highest_level(Attribute attribute) {
    return static_cast<double>(words_of(scale_of(attribute)).size() - 1);
}

/// Adds the error of the map to a level. What is not there at all is not made up by the error: it shrinks
/// with the level below one step.
Estimate<double> with_map_error(Attribute attribute, const Estimate<double>& level, Deviates& deviates) {
    const std::string input =
        "sensing " + std::string(word_of(section_of(attribute))) + " " + std::string(word_of(attribute));
    const std::vector<double>& deviate = deviates.of(input);
    const double error = map_error(attribute);
    const double highest = highest_level(attribute);
    std::vector<double> levels;
    levels.reserve(level.count());
    for (std::size_t draw = 0; draw < level.count(); ++draw) {
        const double present = std::clamp(level[draw], 0.0, 1.0);
        levels.push_back(std::clamp(level[draw] + present * error * deviate[draw], 0.0, highest));
    }
    return Estimate<double>(std::move(levels));
}

/// The nose finds grain weaker than the palate does. The factors are the ratios of the mean levels of aroma
/// and flavor over the styles that describe both (Beer Judge Certification Program, Beer Style Guidelines,
/// 2021, as coded in styles/bjcp-2021).
Estimate<double> in_the_nose(const Estimate<double>& flavor, double factor) {
    return lift([factor](double level) { return factor * level; }, flavor);
}

void sense_grain(const Drivers& drivers, ByAttribute<Estimate<double>>& level) {
    level[Attribute::flavor_malt] = lift(malt_level, drivers.malt.total);
    level[Attribute::flavor_toast] = lift(toast_level, drivers.toast.total);
    level[Attribute::flavor_caramel] = lift(caramel_level, drivers.caramel.total);
    level[Attribute::flavor_roast] = lift(roast_level, drivers.roast.total);
    level[Attribute::flavor_smoke] = lift(smoke_level, drivers.smoke.total);
    level[Attribute::aroma_malt] = in_the_nose(level[Attribute::flavor_malt], 0.89);
    level[Attribute::aroma_toast] = in_the_nose(level[Attribute::flavor_toast], 0.95);
    level[Attribute::aroma_caramel] = in_the_nose(level[Attribute::flavor_caramel], 0.86);
    level[Attribute::aroma_roast] = in_the_nose(level[Attribute::flavor_roast], 0.83);
    level[Attribute::aroma_smoke] = level[Attribute::flavor_smoke];
}

void sense_fermentation(const Drivers& drivers, ByAttribute<Estimate<double>>& level) {
    level[Attribute::aroma_ester] = level[Attribute::flavor_ester] = drivers.ester;
    level[Attribute::aroma_phenol] = level[Attribute::flavor_phenol] = drivers.phenol;
    level[Attribute::aroma_sour] = level[Attribute::flavor_sour] = drivers.sour;
    level[Attribute::aroma_funk] = level[Attribute::flavor_funk] = drivers.funk;
    level[Attribute::aroma_diacetyl] = level[Attribute::flavor_diacetyl] = drivers.diacetyl;
    level[Attribute::aroma_sulfur] = drivers.sulfur;
    // One threshold of dimethyl sulfide is just noticed, very low; each further one is a step (working
    // value).
    level[Attribute::aroma_dms] =
        lift([](double thresholds) { return std::min(thresholds, 7.0); }, drivers.dms);
}

void sense_hops_and_additions(const Drivers& drivers, ByAttribute<Estimate<double>>& level) {
    level[Attribute::aroma_hop] = lift(hop_aroma_level, drivers.hop_aroma.total);
    level[Attribute::flavor_hop] = lift(hop_flavor_level, drivers.hop_flavor.total);
    // Salt is tasted from about 0.4 g/L of sodium chloride in beer and clear at 1 g/L; coriander is clear at
    // about 1 g/L, and 15 g of it with 20 g of peel in 20 L make a wit medium-low in spice (common practice
    // of brewers of gose and wit).
    level[Attribute::flavor_salt] = lift(
        [](Concentration salt) { return std::min(3.0 * in(salt, gram_per_liter), 7.0); }, drivers.salt.total);
    level[Attribute::flavor_spice] = lift(
        [](Concentration spice) {
            return saturating_level(in(spice, gram_per_liter), {.half_at = 2.0, .steepness = 1.0});
        },
        drivers.spice.total);
}

/// Higher alcohols make a beer hotter than its alcohol by itself.
Estimate<double> with_fusels(const Estimate<double>& level, const Drivers& drivers) {
    return lift([](double alcohol, double fusel) { return std::min(alcohol + fusel, 7.0); }, level,
                drivers.fusel);
}

void sense_palate(const Beer& beer, ByAttribute<Estimate<double>>& level) {
    const Drivers& drivers = beer.drivers;
    level[Attribute::flavor_bitterness] =
        lift(bitterness_level, beer.bitterness.total, beer.alcohol, beer.real_extract, drivers.roast.total);
    level[Attribute::flavor_balance] =
        lift(balance_level, beer.bitterness.total, beer.original_gravity.total, beer.apparent_attenuation);
    const auto index = lift(sweetness_index, beer.real_extract, beer.alcohol, drivers.caramel.total,
                            drivers.lactose.total, beer.bitterness.total, beer.carbonation, drivers.sour);
    level[Attribute::flavor_finish] = lift(finish_level, index);
    level[Attribute::flavor_sweetness] = lift(sweetness_level, index);
    level[Attribute::aroma_alcohol] = level[Attribute::flavor_alcohol] =
        with_fusels(lift(alcohol_level, beer.alcohol), drivers);
}

void sense_mouthfeel(const Beer& beer, ByAttribute<Estimate<double>>& level) {
    const Drivers& drivers = beer.drivers;
    const bool nitrogen = drivers.nitrogen;
    const auto body = [nitrogen](Extract real_extract, AlcoholByVolume alcohol, Concentration grain,
                                 Carbonation carbonation) {
        return body_level(real_extract, alcohol, grain, carbonation, nitrogen);
    };
    level[Attribute::mouthfeel_body] =
        lift(body, beer.real_extract, beer.alcohol, drivers.grain_body.total, beer.carbonation);
    const auto creaminess = [nitrogen](double body_felt, Concentration grain, Concentration lactose,
                                       Carbonation carbonation) {
        return creaminess_level(body_felt, grain, lactose, carbonation, nitrogen);
    };
    level[Attribute::mouthfeel_creaminess] =
        lift(creaminess, level[Attribute::mouthfeel_body], drivers.grain_body.total, drivers.lactose.total,
             beer.carbonation);
    level[Attribute::mouthfeel_carbonation] = lift(carbonation_level, beer.carbonation);
    level[Attribute::mouthfeel_warmth] =
        with_fusels(lift(warmth_level, beer.alcohol, beer.real_extract), drivers);
    level[Attribute::mouthfeel_astringency] =
        lift(astringency_level, drivers.roast.total, drivers.dry_hops.total);
}

void sense_appearance(const Beer& beer, ByAttribute<Estimate<double>>& level) {
    const Drivers& drivers = beer.drivers;
    const auto clarity = [&drivers](Concentration grain_haze, Concentration dry_hops) {
        return clarity_level({.grain_haze = grain_haze,
                              .dry_hops = dry_hops,
                              .flocculation = drivers.flocculation,
                              .haze_positive = drivers.haze_positive,
                              .filtered = drivers.filtered,
                              .fined = drivers.fined,
                              .cold_weeks = drivers.cold_weeks});
    };
    level[Attribute::appearance_clarity] = lift(clarity, drivers.grain_haze.total, drivers.dry_hops.total);
    level[Attribute::appearance_head_size] =
        lift(head_size_level, beer.carbonation, drivers.grain_head.total);
    const double adjunct_share = drivers.adjunct_share;
    const auto retention = [adjunct_share](Concentration grain, Bitterness bitterness,
                                           AlcoholByVolume alcohol, Carbonation carbonation, double sour) {
        return head_retention_level(grain, bitterness, alcohol, adjunct_share, carbonation, sour);
    };
    level[Attribute::appearance_head_retention] =
        lift(retention, drivers.grain_head.total, beer.bitterness.total, beer.alcohol, beer.carbonation,
             drivers.sour);
}

/// Beer darker than this lets no light through a glass (common practice).
constexpr Color opaque_from = 30.0 * srm;

std::vector<Attribute> untold_of(const Beer& beer) {
    std::vector<Attribute> untold;
    if (beer.color.total.median() > opaque_from) {
        untold.push_back(Attribute::appearance_clarity);
    }
    if (beer.carbonation_is_assumed) {
        untold.push_back(Attribute::appearance_head_size);
        untold.push_back(Attribute::mouthfeel_carbonation);
    }
    return untold;
}

}  // namespace

Profile sense(const Beer& beer, Deviates& deviates) {
    Profile profile;
    sense_grain(beer.drivers, profile.level);
    sense_fermentation(beer.drivers, profile.level);
    sense_hops_and_additions(beer.drivers, profile.level);
    sense_palate(beer, profile.level);
    sense_mouthfeel(beer, profile.level);
    sense_appearance(beer, profile.level);
    for (const Attribute attribute : all_attributes()) {
        profile.level[attribute] = with_map_error(attribute, profile.level[attribute], deviates);
    }
    profile.untold = untold_of(beer);
    return profile;
}

}  // namespace entrywise
