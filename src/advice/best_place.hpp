#pragma once

#include <optional>
#include <string>

#include "advice/line_up.hpp"
#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "style/declaration.hpp"

namespace entrywise {

/// A style as a place to enter.
struct EntryPlace {
    StyleName name;
    std::string title;
    std::optional<StyleName> base;  ///< of a specialty style: the style that fits best underneath
    PointsAtRisk at_risk;
    double distance = 0.0;  ///< in points, what is customary counted in (`StyleFit`)
};

/// Where a beer would do best, and how it does where it is declared.
struct BestPlace {
    EntryPlace best;
    std::optional<EntryPlace> declared;  ///< where it is among the styles to choose from
    /// The sheet of the declared style. What the entry form leaves out is not charged in it.
    std::optional<Sheet> sheet;
};

/// The first of the ranking of a recipe (`rank`), and the declared style of it, worked out at a fraction of
/// the cost: styles that no palate could bring to the front are passed over, the others are held against ever
/// more draws as long as they may lead, the leaders against all. None where there is no style to choose from.
std::optional<BestPlace> best_place(const Tasting& tasting, const LineUp& line_up,
                                    const std::optional<StyleName>& declared = {});

}  // namespace entrywise
