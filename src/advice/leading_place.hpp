#pragma once

#include <optional>
#include <string>

#include "advice/line_up.hpp"
#include "judging/impression.hpp"
#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "quantity/estimate.hpp"
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

/// What a style that stands alone was found to put at risk over all draws.
struct JudgedAlready {
    StyleName name;
    Estimate<double> points;
};

/// The first of the ranking of a recipe (`rank`), worked out at a fraction of the cost: styles that no palate
/// could bring to the front are passed over, the others are held against ever more draws as long as they may
/// lead, the leaders against all. None where there is no style to choose from. A style that was judged
/// already is not held against all draws again.
std::optional<EntryPlace> leading_place(const Tasting& tasting, const Impression& impression,
                                        const LineUp& line_up,
                                        const std::optional<JudgedAlready>& judged_already = {});

}  // namespace entrywise
