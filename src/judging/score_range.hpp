#pragma once

#include "judging/sheet.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// What the whole score may come to if brewing, packaging and keeping take nothing further: what a well made
/// beer is worth, less the points at risk, never under the courtesy floor. In whole points, as judges give
/// them.
ScoreRange score_range(const PointsAtRisk& at_risk, const ScoreSheet& score_sheet);

}  // namespace entrywise
