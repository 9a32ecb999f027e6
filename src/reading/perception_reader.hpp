#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/node.hpp"
#include "style/perception.hpp"

namespace entrywise {

/// The maps of a file of the format `entrywise/perception/1`: every constant of every map, and the error of
/// each.
Outcome<Perception> read_perception(const Node& document, const std::string& file);

}  // namespace entrywise
