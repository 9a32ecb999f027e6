#pragma once

#include <string>

#include "advice/check.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// What to change, a number for each finding, the dearest first: what would bring it in, and where it comes
/// from. What several sections find and one change mends stands there once. Empty where nothing was found.
std::string corrections_text(const Check& check, const TextStyle& style);

}  // namespace entrywise
