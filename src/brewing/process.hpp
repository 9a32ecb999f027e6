#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantity/quantities.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// How long a dry hop stays on the beer where the recipe gives no time. Common practice.
inline constexpr Duration usual_dry_hop_time = 4.0 * day;

/// The recipe as it will be brewed: its process with everything filled in that the recipe leaves open, and a
/// line for each such filling. Additions stand in an order of their own, so that the order in which a recipe
/// lists them does not matter. Defaults and their spreads are common practice of brewing at home, working
/// values.
struct Process {
    std::vector<GristAddition> grist;
    std::vector<HopAddition> hops;
    std::vector<ExtraAddition> extras;
    std::vector<YeastAddition> yeasts;
    bool mashed = true;
    std::vector<MashRest> mash;
    TemperatureDifference mash_temperature_half_width;
    Uncertain<Volume> volume;
    Uncertain<Share> efficiency;
    Uncertain<Share> kettle_loss;  ///< wort that stays with trub and hops in the kettle, over all
    Duration boil_time;
    Uncertain<EvaporationRate> evaporation;
    Uncertain<Duration> hot_after_boil;  ///< time until the wort is too cool for hops to isomerize
    Temperature fermentation_temperature;
    TemperatureDifference fermentation_temperature_half_width;
    std::optional<Duration> fermentation_time;
    std::optional<DiacetylRest> diacetyl_rest;
    Conditioning conditioning;
    std::optional<Duration> age;  ///< from packaging to judging, where the recipe gives both dates
    Uncertain<Temperature> kept_at;
    Uncertain<Carbonation> carbonation;
    std::vector<std::string> assumptions;
};

/// Fills in a recipe. `any_yeast` below is taken where the recipe names none.
Process process_of(const Recipe& recipe);

/// The wide class of yeast that stands for an unnamed one: a clean ale or lager yeast.
YeastClass any_yeast();

}  // namespace entrywise
