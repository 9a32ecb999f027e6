#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "advice/style_fit.hpp"
#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "style/declaration.hpp"
#include "style/handbook.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A style as a place to enter.
struct RankedStyle {
    StyleName name;
    std::string title;
    std::optional<StyleName> base;  ///< of a specialty style: the style that fits best underneath
    std::string base_title;
    StyleFit fit;
    double distance = 0.0;
    PointsAtRisk at_risk;
    double within = 0.0;                    ///< chance that all numbers are in the style's ranges
    double best = 0.0;                      ///< chance that it is the best choice of all
    std::vector<std::string> departures;    ///< from what is customary, in words
    std::vector<Declaration> declarations;  ///< what the entry form must say and the recipe does not
    std::optional<Sheet> sheet;             ///< of the first five, and of the declared one
};

/// One thing that sets the first styles apart: what it costs in each of them.
struct Separation {
    std::string id;              ///< `flavor.bitterness.above`
    std::vector<double> points;  ///< in the order of the ranking; as many as there are sheets
};

/// The styles in the order in which to enter, and what separates the first of them.
struct Ranking {
    std::vector<RankedStyle> styles;
    std::vector<Separation> separations;   ///< at most six, most separating first
    std::vector<std::string> near_misses;  ///< `one level less roast and 20B leads`
    std::optional<std::size_t> declared;   ///< where the declared style stands, if it is among them
};

/// Holds a recipe against every one of the styles. Points at risk decide what is said of each; the order also
/// counts how close the beer is to the heart of the style and what is customary for it, since many beers lose
/// few points in several styles. A style whose variants are among the styles stands once, as the variant that
/// fits best. Specialty styles are offered where the recipe has what they ask for, on the base that fits
/// best. What is not declared costs nothing here; it is told. Chances count both what is uncertain of the
/// beer and how often such an order is wrong.
Ranking rank(const Recipe& recipe, const std::vector<Style>& styles, const Handbook& handbook,
             const std::optional<StyleName>& declared = {});

}  // namespace entrywise
