#pragma once

#include <vector>

#include "advice/check.hpp"
#include "report/page.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A check as an article of a page. `nearby` are styles to draw beside the one entered.
Article check_article(const Check& check, const ScoreSheet& score_sheet, const std::vector<Style>& nearby);

}  // namespace entrywise
