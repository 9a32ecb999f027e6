#pragma once

#include <optional>
#include <string>

#include "advice/leading_place.hpp"
#include "judging/sheet.hpp"
#include "style/declaration.hpp"

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

/// The style that leads the ranking of all as the best place, with what it saves against the points at risk
/// in the declared one.
BestPlace best_place(const EntryPlace& leading, const std::optional<StyleName>& declared,
                     std::optional<double> points_in_declared);

}  // namespace entrywise
