#pragma once

#include <string>

#include "advice/mend.hpp"
#include "report/terminal.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// A mending for reading: what is at risk, each proposal with its changes, numbers and sections before and
/// after, and the sum of it in the last lines. Where nothing holds, that is said with what stands in the way.
/// No line is longer than the page is wide.
std::string mend_text(const Mending& mending, const ScoreSheet& score_sheet, const TextStyle& style);

}  // namespace entrywise
