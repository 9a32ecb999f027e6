#pragma once

#include <string>

#include "advice/ranking.hpp"
#include "report/terminal.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A ranking as text: the first ten styles, what separates the first five, what to declare, and where the
/// beer would do better than in the style that it declares, both sheets side by side.
std::string rank_text(const Ranking& ranking, const Recipe& recipe, const ScoreSheet& score_sheet,
                      const TextStyle& style);

}  // namespace entrywise
