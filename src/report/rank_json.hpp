#pragma once

#include <optional>

#include "advice/ranking.hpp"
#include "report/json_text.hpp"
#include "style/competition.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A ranking as a document `entrywise/rank/1`.
Json rank_json(const Ranking& ranking, const Recipe& recipe, const ScoreSheet& score_sheet,
               const std::optional<Competition>& competition);

}  // namespace entrywise
