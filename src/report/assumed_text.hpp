#pragma once

#include <string>

#include "brewing/beer.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// What was assumed because the recipe does not say; empty if it says all.
std::string assumed_text(const Beer& beer, const TextStyle& style);

}  // namespace entrywise
