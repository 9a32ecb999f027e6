#pragma once

#include "advice/mend.hpp"
#include "report/page.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A mending as an article of a page.
Article mend_article(const Mending& mending, const ScoreSheet& score_sheet);

}  // namespace entrywise
