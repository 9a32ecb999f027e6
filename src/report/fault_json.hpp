#pragma once

#include <vector>

#include "base/fault.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// Everything wrong with an input, as an `entrywise/fault/1` document. A place that is not known is null, and
/// so is a nearest word where none is near.
Json fault_json(const std::vector<Fault>& faults);

/// The same as a list inside another document.
Json fault_list_json(const std::vector<Fault>& faults);

}  // namespace entrywise
