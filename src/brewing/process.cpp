#include "brewing/process.hpp"

#include <algorithm>
#include <tuple>

#include "base/number.hpp"
#include "brewing/seasoning.hpp"
#include "quantity/text.hpp"

namespace entrywise {

namespace {

/// A value that a recipe states as one number is as good as its maker's scale, jug or thermometer: a relative
/// half width of 2 % for a volume, 4 points for an efficiency that the brewer knows from earlier brews.
constexpr double stated_volume_spread = 0.02;
constexpr Share stated_efficiency_half_width = 4.0 * percent;
constexpr Uncertain<Share> usual_efficiency{72.0 * percent, 9.0 * percent};
constexpr Uncertain<Share> usual_kettle_loss{4.0 * percent, 3.0 * percent};
constexpr Duration usual_boil = 60.0 * minute;
/// Small open kettles boil off about a tenth of the wort in an hour, from 6 to 14 %.
constexpr double usual_evaporation_per_hour = 0.10;
constexpr double evaporation_spread_per_hour = 0.04;
constexpr double stated_evaporation_spread = 0.15;
constexpr Uncertain<Duration> usual_time_hot{12.0 * minute, 8.0 * minute};
constexpr double usual_mash_celsius = 66.5;
constexpr TemperatureDifference usual_mash_half_width = 1.5 * kelvin;
constexpr TemperatureDifference stated_mash_half_width = 0.7 * kelvin;
constexpr TemperatureDifference usual_fermentation_half_width = 2.0 * kelvin;
constexpr TemperatureDifference stated_fermentation_half_width = 1.0 * kelvin;
/// Bottles are kept anywhere between the cellar's cold and the room's warmth.
constexpr double usual_keeping_celsius = 14.0;
constexpr TemperatureDifference usual_keeping_half_width = 7.0 * kelvin;
constexpr TemperatureDifference stated_keeping_half_width = 2.0 * kelvin;
constexpr Uncertain<Carbonation> usual_carbonation{2.45 * volume_of_co2, 0.3 * volume_of_co2};
/// Residual carbon dioxide and the weighing of sugar leave about 0.15 volumes open (standard deviation).
constexpr Carbonation stated_carbonation_half_width = 0.19 * volume_of_co2;

std::vector<GristAddition> in_own_order(std::vector<GristAddition> grist) {
    std::sort(grist.begin(), grist.end(), [](const GristAddition& first, const GristAddition& second) {
        return std::tie(first.fermentable.name, first.use, first.mass, first.fermentable.color.middle) <
               std::tie(second.fermentable.name, second.use, second.mass, second.fermentable.color.middle);
    });
    return grist;
}

std::vector<HopAddition> in_own_order(std::vector<HopAddition> hops) {
    std::sort(hops.begin(), hops.end(), [](const HopAddition& first, const HopAddition& second) {
        return std::tie(first.hop.name, first.hop.alpha.middle, first.use, first.time, first.mass, first.form,
                        first.temperature) < std::tie(second.hop.name, second.hop.alpha.middle, second.use,
                                                      second.time, second.mass, second.form,
                                                      second.temperature);
    });
    return hops;
}

std::vector<ExtraAddition> in_own_order(std::vector<ExtraAddition> extras) {
    std::sort(extras.begin(), extras.end(), [](const ExtraAddition& first, const ExtraAddition& second) {
        return std::tie(first.name, first.kind, first.use, first.mass, first.volume, first.time) <
               std::tie(second.name, second.kind, second.use, second.mass, second.volume, second.time);
    });
    return extras;
}

/// Brewer's yeast first, as it leads the fermentation; then by name.
std::vector<YeastAddition> in_own_order(std::vector<YeastAddition> yeasts) {
    std::stable_sort(
        yeasts.begin(), yeasts.end(), [](const YeastAddition& first, const YeastAddition& second) {
            const bool first_sours = first.yeast.lactic || first.yeast.brettanomyces;
            const bool second_sours = second.yeast.lactic || second.yeast.brettanomyces;
            return std::tie(first_sours, first.yeast.name) < std::tie(second_sours, second.yeast.name);
        });
    return yeasts;
}

Uncertain<Volume> volume_of(const Recipe& recipe) {
    const bool states_spread = recipe.volume.half_width > 0.0 * liter;
    return states_spread
               ? recipe.volume
               : Uncertain<Volume>{recipe.volume.middle, stated_volume_spread * recipe.volume.middle};
}

void fill_efficiency(const Recipe& recipe, Process& process) {
    const bool anything_mashed =
        recipe.mashed &&
        std::any_of(recipe.grist.begin(), recipe.grist.end(),
                    [](const GristAddition& addition) { return needs_a_mash(addition.fermentable.kind); });
    process.efficiency = usual_efficiency;
    if (recipe.efficiency) {
        const bool states_spread = recipe.efficiency->half_width > 0.0 * percent;
        process.efficiency = {recipe.efficiency->middle,
                              states_spread ? recipe.efficiency->half_width : stated_efficiency_half_width};
    } else if (anything_mashed && !recipe.measured.original_gravity) {
        process.assumptions.push_back("brewhouse efficiency " + to_text(usual_efficiency));
    }
}

void fill_mash(const Recipe& recipe, Process& process) {
    process.mashed = recipe.mashed;
    process.mash = recipe.mash;
    process.mash_temperature_half_width = stated_mash_half_width;
    if (recipe.mashed && recipe.mash.empty()) {
        process.mash = {{celsius(usual_mash_celsius), 1.0 * hour}};
        process.mash_temperature_half_width = usual_mash_half_width;
        process.assumptions.push_back("mash at " + told(process.mash.front().temperature, recipe.measures) +
                                      " for 1 h");
    }
    for (const MashRest& rest : process.mash) {
        if (!rest.time_is_stated) {
            process.assumptions.push_back("rest at " + told(rest.temperature, recipe.measures) + " for " +
                                          to_text(rest.time));
        }
    }
}

void fill_boil(const Recipe& recipe, Process& process) {
    process.boil_time = recipe.boil.time.value_or(usual_boil);
    if (!recipe.boil.time) {
        process.assumptions.push_back("boil of " + to_text(usual_boil));
    }
    const Volume volume = recipe.volume.middle;
    process.evaporation = {usual_evaporation_per_hour * volume / hour,
                           evaporation_spread_per_hour * volume / hour};
    if (recipe.boil.evaporation) {
        process.evaporation = {*recipe.boil.evaporation,
                               stated_evaporation_spread * *recipe.boil.evaporation};
    }
    process.kettle_loss = usual_kettle_loss;
    process.hot_after_boil = usual_time_hot;
}

/// Whether none of the yeasts makes beer by itself: bacteria only sour it.
bool only_sour(const std::vector<YeastAddition>& yeasts) {
    return std::all_of(yeasts.begin(), yeasts.end(), [](const YeastAddition& addition) {
        return addition.yeast.lactic && !addition.yeast.brettanomyces;
    });
}

void fill_yeast(const Recipe& recipe, Process& process) {
    process.yeasts = in_own_order(recipe.yeasts);
    if (only_sour(recipe.yeasts)) {
        process.yeasts.push_back({.yeast = any_yeast(), .attenuation_is_stated = false, .position = {}});
        process.assumptions.emplace_back("a clean yeast of 70 to 84 % attenuation");
    }
    const Span<Temperature>& range = process.yeasts.front().yeast.temperature;
    const Temperature middle = range.low + 0.5 * (range.high - range.low);
    process.fermentation_temperature = recipe.fermentation_temperature.value_or(middle);
    process.fermentation_temperature_half_width =
        recipe.fermentation_temperature ? stated_fermentation_half_width : usual_fermentation_half_width;
    if (!recipe.fermentation_temperature) {
        process.assumptions.push_back("fermentation at about " + told(middle, recipe.measures));
    }
}

/// What the fermentation of a lager, and of slow yeasts and bacteria, takes in time.
void fill_maturation(const Recipe& recipe, Process& process) {
    process.fermentation_time = recipe.fermentation_time;
    process.diacetyl_rest = recipe.diacetyl_rest;
    process.conditioning = recipe.conditioning;
    const bool says_nothing = !recipe.fermentation_time && !recipe.diacetyl_rest && !recipe.conditioning.time;
    if (says_nothing && process.yeasts.front().yeast.fermentation == Fermentation::bottom) {
        process.assumptions.emplace_back("a diacetyl rest and about 4 weeks of lagering");
    }
    const bool slow = std::any_of(process.yeasts.begin(), process.yeasts.end(),
                                  [](const YeastAddition& addition) { return addition.yeast.brettanomyces; });
    if (slow && !recipe.fermentation_time && !recipe.conditioning.time) {
        process.assumptions.emplace_back("about half a year for the slow yeasts and bacteria");
    }
}

void fill_keeping(const Recipe& recipe, Process& process) {
    const Keeping& keeping = recipe.keeping;
    if (!keeping.packaged || !keeping.judged) {
        return;
    }
    process.age = static_cast<double>((*keeping.judged - *keeping.packaged).count()) * day;
    process.kept_at = keeping.temperature
                          ? Uncertain<Temperature>{*keeping.temperature, stated_keeping_half_width}
                          : Uncertain<Temperature>{celsius(usual_keeping_celsius), usual_keeping_half_width};
    if (!keeping.temperature) {
        process.assumptions.push_back("kept at about " + told(process.kept_at.middle, recipe.measures));
    }
}

void fill_extras(const Recipe& recipe, Process& process) {
    process.extras = in_own_order(recipe.extras);
    for (const ExtraAddition& extra : process.extras) {
        if (lacks_a_dose(extra)) {
            const Mass mass = usual_dose(extra).middle * recipe.volume.middle;
            process.assumptions.push_back("about " + told(mass, recipe.measures) + " of " + extra.name);
        }
    }
}

void fill_carbonation(const Recipe& recipe, Process& process) {
    process.carbonation = usual_carbonation;
    if (recipe.conditioning.carbonation) {
        const Uncertain<Carbonation>& stated = *recipe.conditioning.carbonation;
        const bool states_spread = stated.half_width > 0.0 * volume_of_co2;
        process.carbonation = {stated.middle,
                               states_spread ? stated.half_width : stated_carbonation_half_width};
    } else if (!recipe.measured.carbonation) {
        process.assumptions.push_back("carbonation " + to_text(usual_carbonation));
    }
}

}  // namespace

YeastClass any_yeast() {
    YeastClass yeast;
    yeast.name = "any clean yeast";
    yeast.attenuation = {0.77 * fully_attenuated, 0.07 * fully_attenuated};
    yeast.temperature = {celsius(15.0), celsius(21.0)};
    yeast.ester = {0.0, 3.0};
    yeast.diacetyl = {0.0, 1.0};
    yeast.sulfur = {0.0, 1.0};
    yeast.alcohol_limit = 11.0 * percent_by_volume;
    return yeast;
}

Process process_of(const Recipe& recipe) {
    Process process;
    process.grist = in_own_order(recipe.grist);
    process.hops = in_own_order(recipe.hops);
    process.volume = volume_of(recipe);
    fill_efficiency(recipe, process);
    fill_mash(recipe, process);
    fill_boil(recipe, process);
    fill_yeast(recipe, process);
    fill_maturation(recipe, process);
    fill_keeping(recipe, process);
    fill_extras(recipe, process);
    fill_carbonation(recipe, process);
    return process;
}

}  // namespace entrywise
