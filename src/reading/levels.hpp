#pragma once

#include <optional>

#include "reading/fault_log.hpp"
#include "reading/node.hpp"
#include "recipe/ingredients.hpp"
#include "style/attribute.hpp"

namespace entrywise {

/// The levels that a node's words stand for on a scale: `medium`, `low..medium-high`, the lower one first.
std::optional<LevelSpan> levels_from(const Node& node, SensoryScale scale, FaultLog& faults);

}  // namespace entrywise
