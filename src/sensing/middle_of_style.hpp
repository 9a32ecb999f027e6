#pragma once

#include <optional>

#include "quantity/quantities.hpp"
#include "sensing/customary_yeast.hpp"
#include "style/perception.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The beer in the middle of a style's ranges. What the ranges leave open is read from what is customary for
/// the style.
struct MiddleOfStyle {
    SpecificGravity original_gravity;
    SpecificGravity final_gravity;
    Extract original_extract;
    Extract real_extract;
    Attenuation attenuation;
    AlcoholByVolume alcohol;
    Bitterness bitterness;
    Carbonation carbonation;
    Color color;
    double malt_richness = 1.0;  ///< what its color says of its base malts
    Concentration grain_body;
    Concentration grain_head;
    Concentration lactose;
    double adjunct_share = 0.0;
    Concentration roast;
    Concentration caramel;
    Concentration toast;
    double sour = 0.0;  ///< middle of what the style accepts
    std::optional<YeastLevels> yeast;
};

/// Nothing where the style prints no closed range of one of the five numbers.
std::optional<MiddleOfStyle> middle_of(const Style& style);

/// The level that the numbers in the middle of a style give by the maps, for the attributes that have a map
/// of numbers: bitterness, balance, finish, sweetness, malt, caramel, roast, alcohol, body, creaminess,
/// carbonation, warmth, head; for toast, esters, phenols, diacetyl and sulfur, which customary malts and
/// yeasts tell; and for the sourness that is smelled, which follows what is tasted.
ByAttribute<std::optional<double>> levels_at_middle(const MiddleOfStyle& middle,
                                                    const Perception& perception);

}  // namespace entrywise
