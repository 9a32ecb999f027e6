#pragma once

#include <optional>
#include <string>
#include <vector>

#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "style/handbook.hpp"
#include "style/style.hpp"

namespace entrywise {

/// Where an entry would stand best, what is not declared aside.
struct BestPlace {
    StyleName name;
    std::string title;
    std::optional<StyleName> base;  ///< of a specialty style: the style that fits best underneath
    PointsAtRisk at_risk;
    double gain = 0.0;  ///< points at risk that it saves against the declared style; zero where that is best
    bool is_declared = false;
};

/// From how many points on a move is worth to talk about: about half of what judges of one beer differ by
/// before they talk (working value).
inline constexpr double points_worth_a_move = 2.0;

/// The first of the leading styles that saves `points_worth_a_move` against the declared one, or else the
/// style that leads. `points_in_declared` stands where the declared style is not among the ranked. Nothing
/// where no style can be ranked.
std::optional<BestPlace> best_place(const Recipe& recipe, const std::optional<StyleName>& declared,
                                    std::optional<double> points_in_declared,
                                    const std::vector<Style>& styles, const Handbook& handbook);

}  // namespace entrywise
