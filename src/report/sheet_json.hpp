#pragma once

#include "judging/sheet.hpp"
#include "report/json_text.hpp"
#include "style/score_sheet.hpp"
#include "style/style.hpp"

namespace entrywise {

/// {"guide", "code", "name"}.
Json style_json(const Style& style);

/// The predicted sheet: points at risk by section and of all, and the frame of the whole score.
Json sheet_json(const Sheet& sheet, const ScoreSheet& score_sheet);

}  // namespace entrywise
