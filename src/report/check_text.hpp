#pragma once

#include <optional>
#include <string>

#include "advice/check.hpp"
#include "report/terminal.hpp"
#include "screening/best_place.hpp"

namespace entrywise {

/// A recipe held against a style, for reading: the predicted sheet as a judge fills it in, what to change,
/// where else to enter if that is known, the numbers, what was assumed, what the style leaves open, cautions,
/// and the sum of it in the last lines. No line is longer than the page is wide. The score sheet is the one
/// that it was judged by.
std::string check_text(const Check& check, const ScoreSheet& score_sheet,
                       const std::optional<BestPlace>& best, const TextStyle& style);

}  // namespace entrywise
