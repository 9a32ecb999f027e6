#pragma once

#include <string_view>

#include "style/style.hpp"

namespace entrywise {

/// What a beer's place among the styles is decided by. Distances are in points; customs and numbers are
/// brought to points by the weights of `distance_of`.
struct StyleFit {
    double points = 0.0;   ///< expected points at risk
    double numbers = 0.0;  ///< how unlikely its numbers are among beers of the style (`NumberFit`)
    double wording = 0.0;  ///< how widely the style is worded: mean logarithm of levels that it accepts
    double breadth = 0.0;  ///< how many kinds of beer it takes in: logarithm of the custom's breadth
    double yeast = 0.0;    ///< departures from what is customary (`CustomFit`)
    double hops = 0.0;
    double grist = 0.0;
    double rarity = 0.0;  ///< 1 for a style that few enter, and for one that stands on another
    double guide = 0.0;   ///< points by which its guide is held back (`handicap_of`)
};

/// How much each of these counts, in points.
struct FitWeights {
    double numbers = 0.0;
    double wording = 0.0;
    double breadth = 0.0;
    double yeast = 0.0;
    double hops = 0.0;
    double grist = 0.0;
    double rarity = 0.0;
};

/// Fitted to the styles that real recipes were accepted in, by `tools/measure-ranking FOLDER`, and rounded.
FitWeights usual_fit_weights();

/// By how many points the closest style of a guide comes out closer than the closest of the default guide,
/// for the same beers and without anything in the beers to account for it: a guide that words its styles more
/// narrowly, tells less of what is not customary, or has more styles to choose from would lead by that alone.
/// Zero for the default guide and for guides of one's own, of which nothing is known.
double handicap_of(std::string_view guide);

double distance_of(const StyleFit& fit, const FitWeights& weights);

/// How widely a style is worded: the mean logarithm of the levels that it accepts of what it states.
double wording_of(const Style& style);

}  // namespace entrywise
