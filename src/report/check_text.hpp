#pragma once

#include <string>

#include "advice/check.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// A recipe held against a style, for reading: the predicted sheet as a judge fills it in, what to change,
/// the numbers, what was assumed, what the style leaves open, cautions, and the sum of it in the last lines.
/// No line is longer than the page is wide. The score sheet is the one that it was judged by.
std::string check_text(const Check& check, const ScoreSheet& score_sheet, const TextStyle& style);

}  // namespace entrywise
