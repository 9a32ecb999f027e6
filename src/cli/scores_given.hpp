#pragma once

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "judging/score_comparison.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// The points that the call gives to sections, as `aroma=9,flavor=14`. A section that the sheet lacks, one
/// named twice, and points that are no number from nothing to what the section carries are faults of the
/// call.
Outcome<SectionScores> scores_given(const Call& call, const ScoreSheet& score_sheet);

}  // namespace entrywise
