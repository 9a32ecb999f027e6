#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/node.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// The score sheet of a file of the format `entrywise/sheet/1`. Every attribute, and color, must be shown by
/// one cause and no more; the shares of a cause must add up to one.
Outcome<ScoreSheet> read_score_sheet(const Node& document, const std::string& file);

}  // namespace entrywise
