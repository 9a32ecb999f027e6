#pragma once

#include <string>

#include "judging/sheet.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// The predicted sheet as a table: the points at risk of each section and of all.
std::string sheet_text(const Sheet& sheet, const ScoreSheet& score_sheet, const TextStyle& style);

/// Points as a table and a sentence print them, with one decimal.
std::string points_text(double points);

}  // namespace entrywise
