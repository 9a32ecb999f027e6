#pragma once

#include "advice/ranking.hpp"
#include "report/json_text.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A ranking as a document `entrywise/rank/1`.
Json rank_json(const Ranking& ranking, const Recipe& recipe, const ScoreSheet& score_sheet);

}  // namespace entrywise
