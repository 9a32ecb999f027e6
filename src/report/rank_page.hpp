#pragma once

#include <vector>

#include "advice/ranking.hpp"
#include "brewing/beer.hpp"
#include "report/page.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A ranking as an article of a page. `styles` are those that were ranked, for their ranges.
Article rank_article(const Ranking& ranking, const Recipe& recipe, const Beer& beer,
                     const std::vector<Style>& styles, const ScoreSheet& score_sheet);

}  // namespace entrywise
