#pragma once

#include <string>

#include "advice/check.hpp"
#include "report/terminal.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// Points as reports print them: to a tenth.
std::string points_text(double points);

/// `2.5–4.1`, the points that eight in ten come to.
std::string points_interval_text(const PointsAtRisk& at_risk, const TextStyle& style);

/// The predicted score sheet, as a judge fills it in: section by section what is met there, what is right by
/// the style and what is out of it, with what that costs, and the points at risk; last all of them.
std::string sheet_text(const Check& check, const ScoreSheet& score_sheet, const TextStyle& style);

}  // namespace entrywise
