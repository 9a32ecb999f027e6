#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"
#include "reading/fault_log.hpp"
#include "reading/node.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// What was measured, from the map of a recipe. A final gravity above the original gravity is a fault.
Measured read_measured(const Node& node, FaultLog& faults);

/// What was measured, from texts such as `original_gravity=1.050` or `final_gravity=1.011,bitterness=40 IBU`,
/// as the command line has them. Keys and units are those of a recipe; a bare number takes the unit that the
/// key makes clear: IBU, SRM, percent, volumes. Faults have their place in `file`.
Outcome<Measured> read_measured(const std::vector<std::string>& texts, const std::string& file);

/// The first, and what it leaves out from the second. What is put together is checked as what is read at
/// once.
Outcome<Measured> measured_over(const Measured& first, const Measured& second, const std::string& file);

}  // namespace entrywise
