#include "sensing/sense.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "sensing/appearance.hpp"
#include "sensing/bitterness.hpp"
#include "sensing/grain.hpp"
#include "sensing/hops.hpp"
#include "sensing/nose.hpp"
#include "sensing/palate.hpp"
#include "sensing/saturation.hpp"

namespace entrywise {

namespace {

/// Standard error, in steps, of what no map is fitted to (working values).
double working_error(Attribute attribute) {
    switch (attribute) {
        case Attribute::mouthfeel_carbonation:
        case Attribute::appearance_clarity:
            return 0.4;
        case Attribute::aroma_hop:
        case Attribute::flavor_hop:
            return 0.7;
        default:
            return 0.5;
    }
}

double map_error(Attribute attribute, const Perception& perception) {
    const double fitted = perception.error[attribute];
    return fitted > 0.0 ? fitted : working_error(attribute);
}

/// The name of the error of an attribute's map among the inputs that are drawn.
const std::string& input_of(Attribute attribute) {
    static const ByAttribute<std::string> names = [] {
        ByAttribute<std::string> inputs;
        for (const Attribute each : all_attributes()) {
            inputs[each] =
                "sensing " + std::string(word_of(section_of(each))) + " " + std::string(word_of(each));
        }
        return inputs;
    }();
    return names[attribute];
}

/// Adds the error of the map to a level. What is not there at all is not made up by the error: it shrinks
/// with the level below one step.
Estimate<double> with_map_error(Attribute attribute, const Estimate<double>& level, double error,
                                Deviates& deviates) {
    const std::vector<double>& deviate = deviates.of(input_of(attribute));
    const auto& levels = level.draws();
    if (std::all_of(levels.begin(), levels.end(), [](double each) { return each == 0.0; })) {
        return level;
    }
    const double highest = highest_level(attribute);
    std::vector<double> sensed(levels.size());
    for (std::size_t draw = 0; draw < sensed.size(); ++draw) {
        const double present = std::min(std::max(levels[draw], 0.0), 1.0);
        const double with_error = levels[draw] + present * error * deviate[draw];
        sensed[draw] = std::min(std::max(with_error, 0.0), highest);
    }
    return Estimate<double>(std::move(sensed));
}

Estimate<double> in_the_nose(Attribute attribute, const Estimate<double>& flavor) {
    const double share = share_in_the_nose(attribute);
    return lift([share](double level) { return share * level; }, flavor);
}

/// How rich the beer is in malt, of which caramel, toast and roast are a part.
Estimate<double> richness_of(const Beer& beer, const ByAttribute<Estimate<double>>& level) {
    const auto richness = [](Concentration malt, Extract original_extract, SpecificGravity original_gravity,
                             double caramel, double toast, double roast) {
        return malt_richness(malt, original_extract, original_gravity, caramel + toast + roast);
    };
    return lift(richness, beer.drivers.malt.total, beer.original_extract, beer.original_gravity.total,
                level[Attribute::flavor_caramel], level[Attribute::flavor_toast],
                level[Attribute::flavor_roast]);
}

void sense_malt(const Beer& beer, const MaltMap& map, const Estimate<double>& richness,
                ByAttribute<Estimate<double>>& level) {
    const auto malt = [&map](double richness_of_malt, Extract real_extract, Bitterness bitterness,
                             SpecificGravity original_gravity, double sour) {
        return malt_level(map, real_extract, richness_of_malt, bitterness_ratio(bitterness, original_gravity),
                          sour);
    };
    level[Attribute::flavor_malt] = lift(malt, richness, beer.real_extract, beer.tasted_bitterness,
                                         beer.original_gravity.total, beer.drivers.sour);
    level[Attribute::aroma_malt] = in_the_nose(Attribute::aroma_malt, level[Attribute::flavor_malt]);
}

void sense_grain(const Beer& beer, const Perception& perception, ByAttribute<Estimate<double>>& level) {
    const Drivers& drivers = beer.drivers;
    const auto along = [](auto map, SaturationCurve curve) {
        return [map, curve](Concentration dose) { return map(curve, dose); };
    };
    level[Attribute::flavor_toast] = lift(toast_level, drivers.toast.total);
    level[Attribute::flavor_caramel] = lift(along(caramel_level, perception.caramel), drivers.caramel.total);
    level[Attribute::flavor_roast] = lift(along(roast_level, perception.roast), drivers.roast.total);
    level[Attribute::flavor_smoke] = lift(smoke_level, drivers.smoke.total);
    level[Attribute::aroma_smoke] = level[Attribute::flavor_smoke];
    for (const auto& [aroma, flavor] : {std::pair(Attribute::aroma_toast, Attribute::flavor_toast),
                                        std::pair(Attribute::aroma_caramel, Attribute::flavor_caramel),
                                        std::pair(Attribute::aroma_roast, Attribute::flavor_roast)}) {
        level[aroma] = in_the_nose(aroma, level[flavor]);
    }
}

void sense_fermentation(const Drivers& drivers, ByAttribute<Estimate<double>>& level) {
    level[Attribute::aroma_ester] = level[Attribute::flavor_ester] = drivers.ester;
    level[Attribute::aroma_phenol] = level[Attribute::flavor_phenol] = drivers.phenol;
    level[Attribute::flavor_sour] = drivers.sour;
    level[Attribute::aroma_sour] = in_the_nose(Attribute::aroma_sour, drivers.sour);
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

void sense_palate(const Beer& beer, const Perception& perception, ByAttribute<Estimate<double>>& level) {
    const Drivers& drivers = beer.drivers;
    const auto bitterness = [&perception](Bitterness ibus, SpecificGravity original_gravity, double sour,
                                          double roast) {
        return bitterness_level(perception.bitterness, ibus, original_gravity, sour, roast);
    };
    level[Attribute::flavor_bitterness] =
        lift(bitterness, beer.tasted_bitterness, beer.original_gravity.total, drivers.sour,
             level[Attribute::flavor_roast]);
    const auto balance = [&perception](Bitterness ibus, SpecificGravity original_gravity,
                                       Attenuation attenuation, Carbonation carbonation) {
        return balance_level(perception.balance, ibus, original_gravity, attenuation, carbonation);
    };
    level[Attribute::flavor_balance] = lift(balance, beer.tasted_bitterness, beer.original_gravity.total,
                                            beer.apparent_attenuation, beer.carbonation);
    const auto finish = [&perception](Extract real_extract, AlcoholByVolume alcohol, Bitterness ibus,
                                      Carbonation carbonation, Concentration lactose, double sour) {
        return finish_level(perception.finish, {.real_extract = real_extract,
                                                .alcohol = alcohol,
                                                .bitterness = ibus,
                                                .carbonation = carbonation,
                                                .lactose = lactose,
                                                .sour = sour});
    };
    level[Attribute::flavor_finish] = lift(finish, beer.real_extract, beer.alcohol, beer.tasted_bitterness,
                                           beer.carbonation, drivers.lactose.total, drivers.sour);
    const auto sweetness = [&perception](double ending) {
        return sweetness_level(perception.sweetness, ending);
    };
    level[Attribute::flavor_sweetness] = lift(sweetness, level[Attribute::flavor_finish]);
}

/// Higher alcohols make a beer hotter than its alcohol by itself.
Estimate<double> alcohol_of(const Beer& beer, const AlcoholMap& map) {
    const auto level = [&map](AlcoholByVolume alcohol, double fusel) {
        return std::min(alcohol_level(map, alcohol) + fusel, 7.0);
    };
    return lift(level, beer.alcohol, beer.drivers.fusel);
}

void sense_alcohol(const Beer& beer, const Perception& perception, ByAttribute<Estimate<double>>& level) {
    level[Attribute::aroma_alcohol] = alcohol_of(beer, perception.alcohol_aroma);
    level[Attribute::flavor_alcohol] = alcohol_of(beer, perception.alcohol_flavor);
    level[Attribute::mouthfeel_warmth] = alcohol_of(beer, perception.warmth);
}

void sense_mouthfeel(const Beer& beer, const Perception& perception, const Estimate<double>& richness,
                     ByAttribute<Estimate<double>>& level) {
    const Drivers& drivers = beer.drivers;
    const bool nitrogen = drivers.nitrogen;
    const auto body = [&perception, nitrogen](Extract real_extract, AlcoholByVolume alcohol,
                                              double richness_of_malt, Concentration grain,
                                              Carbonation carbonation) {
        return body_level(perception.body, {.real_extract = real_extract,
                                            .alcohol = alcohol,
                                            .malt_richness = richness_of_malt,
                                            .grain_body = grain,
                                            .carbonation = carbonation,
                                            .nitrogen = nitrogen});
    };
    level[Attribute::mouthfeel_body] =
        lift(body, beer.real_extract, beer.alcohol, richness, drivers.grain_body.total, beer.carbonation);
    const auto creaminess = [nitrogen](double body_felt, Concentration grain, Concentration lactose,
                                       Carbonation carbonation) {
        return creaminess_level(body_felt, grain, lactose, carbonation, nitrogen);
    };
    level[Attribute::mouthfeel_creaminess] =
        lift(creaminess, level[Attribute::mouthfeel_body], drivers.grain_body.total, drivers.lactose.total,
             beer.carbonation);
    level[Attribute::mouthfeel_carbonation] = lift(carbonation_level, beer.carbonation);
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

Profile sense(const Beer& beer, const Perception& perception, Deviates& deviates) {
    Profile profile;
    profile.perception = perception;
    sense_grain(beer, perception, profile.level);
    const Estimate<double> richness = richness_of(beer, profile.level);
    sense_malt(beer, perception.malt, richness, profile.level);
    sense_fermentation(beer.drivers, profile.level);
    sense_hops_and_additions(beer.drivers, profile.level);
    sense_palate(beer, perception, profile.level);
    sense_alcohol(beer, perception, profile.level);
    sense_mouthfeel(beer, perception, richness, profile.level);
    sense_appearance(beer, profile.level);
    for (const Attribute attribute : all_attributes()) {
        Estimate<double>& level = profile.level[attribute];
        level = with_map_error(attribute, level, map_error(attribute, perception), deviates);
    }
    profile.untold = untold_of(beer);
    return profile;
}

}  // namespace entrywise
