#pragma once

#include <span>
#include <string_view>

#include "style/attribute.hpp"

namespace entrywise {

// How a palate turns numbers into words: the fitted constants of the maps in src/sensing, as
// `styles/perception.yaml` holds them. What each map does with them is told where the map is.

/// A curve that rises from nothing and flattens out toward the strongest word.
struct SaturationCurve {
    double half_at = 1.0;    ///< dose at which half of the strongest is sensed
    double steepness = 1.0;  ///< 1 rises at once; more than 1 keeps small doses unnoticed
};

/// Bitterness: steps at full saturation, steps for each unit of the ratio to gravity, and the share that a
/// step of sourness or of roast takes away.
struct BitternessMap {
    double by_amount = 0.0;
    double by_ratio = 0.0;
    double masked_by_sour = 0.0;
    double masked_by_roast = 0.0;
};

/// Balance: the level at a ratio of 0.5 and usual attenuation, and the steps for each doubling of the ratio,
/// each tenth of attenuation and each volume of carbonation.
struct BalanceMap {
    double at_even = 0.0;
    double by_doubling = 0.0;
    double by_attenuation = 0.0;
    double by_carbonation = 0.0;
};

/// Finish: the level of a usual beer (4.5 °P real extract, 5.5 % alcohol, 25 IBU, 2.5 volumes, not sour) and
/// the steps for each °P, percent, ten IBU, volume and step of sourness beyond it.
struct FinishMap {
    double of_usual_beer = 0.0;
    double by_extract = 0.0;
    double by_alcohol = 0.0;
    double by_ten_ibu = 0.0;
    double by_carbonation = 0.0;
    double by_sour = 0.0;
};

/// Sweetness: the level at a medium finish, and the steps for each step of finish.
struct SweetnessMap {
    double at_medium_finish = 0.0;
    double by_finish = 0.0;
};

/// Body: the curve over real extract in °P, the extract that tastes as full as each unit of richness in malt
/// above that of pale ale malt, the extract that each percent of alcohol above six takes away, and the steps
/// that each volume of carbonation above 2.5 thins it by.
struct BodyMap {
    SaturationCurve curve;
    double by_richness = 0.0;
    double easing_by_alcohol = 0.0;
    double thinning_by_carbonation = 0.0;
};

/// Alcohol as it is tasted, smelled or felt: the percent by volume that goes unnoticed, and the steps for
/// each percent beyond.
struct AlcoholMap {
    double unnoticed = 0.0;
    double by_percent = 0.0;
};

/// Malt: the level of a usual beer (4.8 °P real extract, richness of pale ale malt, ratio of 0.5, not sour),
/// the exponent of real extract, and the steps for each unit of the ratio, of richness and of sourness.
struct MaltMap {
    double of_usual_beer = 0.0;
    double by_extract = 0.0;
    double masked_by_ratio = 0.0;
    double by_richness = 0.0;
    double masked_by_sour = 0.0;
};

/// The constants of all fitted maps, and how far each is off.
struct Perception {
    BitternessMap bitterness;
    BalanceMap balance;
    FinishMap finish;
    SweetnessMap sweetness;
    BodyMap body;
    AlcoholMap warmth;
    AlcoholMap alcohol_flavor;
    AlcoholMap alcohol_aroma;
    MaltMap malt;
    SaturationCurve roast;    ///< over grams of black malt in a liter
    SaturationCurve caramel;  ///< over grams of crystal malt of 120 EBC in a liter
    /// Standard error of a map, in steps, from one beer to the next; zero for what no map is fitted to.
    ByAttribute<double> error;
};

/// A constant of a map by its name, so that files are read and written by one list.
struct MapConstant {
    std::string_view name;
    double& (*of)(Perception& perception);
};

/// A map as files name it, the attributes that it tells, and its constants.
struct FittedMap {
    std::string_view name;
    std::span<const Attribute> attributes;
    std::span<const MapConstant> constants;
};

std::span<const FittedMap> fitted_maps();

}  // namespace entrywise
