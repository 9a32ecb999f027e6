#include "judging/score_range.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

ScoreRange score_range(const PointsAtRisk& at_risk, const ScoreSheet& score_sheet) {
    const auto whole = [&](double points) {
        return std::max(std::round(points), score_sheet.courtesy_floor);
    };
    ScoreRange range{.low = whole(score_sheet.well_made.low - at_risk.high),
                     .high = whole(score_sheet.well_made.high - at_risk.low),
                     .bands = {}};
    for (const ScoreBand& band : score_sheet.bands) {
        if (band.high >= range.low && band.low <= range.high) {
            range.bands.push_back(band.name);
        }
    }
    return range;
}

}  // namespace entrywise
