#pragma once

#include <optional>
#include <string>

#include "advice/ranking.hpp"
#include "report/terminal.hpp"
#include "style/competition.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A ranking as text: the first ten styles, what separates the first five, what to declare, and where the
/// beer would do better than in the style that it declares, both sheets side by side. Where styles of several
/// guides are ranked, each is named with its guide; at a competition, with the table that it is judged at.
std::string rank_text(const Ranking& ranking, const Recipe& recipe, const ScoreSheet& score_sheet,
                      const std::optional<Competition>& competition, const TextStyle& style);

}  // namespace entrywise
