#pragma once

#include "quantity/measures.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// The units that most amounts of a recipe are written in.
Measures measures_of(const Node& recipe);

}  // namespace entrywise
