#pragma once

#include <vector>

#include "tools/validation/comparison.hpp"

namespace entrywise {

/// What tests/published holds, beside what the formulas of src/brewing make of it. Values alone: a check that
/// something rises, falls or comes first stands in the tests.
std::vector<Quantity> published_values();

}  // namespace entrywise
