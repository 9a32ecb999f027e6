#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"

namespace entrywise {

/// Everything wrong with an input, a line each, in the order in which it stands there.
std::string fault_text(const std::vector<Fault>& faults);

}  // namespace entrywise
