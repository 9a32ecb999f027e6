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

/// The first of the ranking of a recipe (`rank`), worked out at a fraction of the cost: styles that no palate
/// could bring to the front are passed over, the others are held against ever more draws as long as they may
/// lead, the leaders against all. None where there is no style to choose from. A style that is judged
/// elsewhere is told with the points of few draws where it leads alone.
std::optional<EntryPlace> leading_place(const Tasting& tasting, const LineUp& line_up,
                                        const std::optional<StyleName>& judged_elsewhere = {});

}  // namespace entrywise
