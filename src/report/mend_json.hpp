#pragma once

#include "advice/mend.hpp"
#include "report/json_text.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A mending as an `entrywise/mend/1` document: each proposal with its changes, the sheet and the numbers
/// before and after, and what of the measured no longer holds.
Json mend_json(const Mending& mending, const ScoreSheet& score_sheet);

}  // namespace entrywise
