#pragma once

#include "base/fault.hpp"
#include "judging/score_comparison.hpp"
#include "reading/node.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// The points that a judge gave, from {"aroma": "9", "flavor": "14.5"}; null for none. A section that is not
/// on the sheet and points that are no number or more than the section carries are faults.
Outcome<SectionScores> scores_in(const Node* scores, const ScoreSheet& score_sheet);

}  // namespace entrywise
