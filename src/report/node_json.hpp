#pragma once

#include "reading/node.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// What a document holds, as JSON: quoted scalars as strings; plain ones as the number, truth value or null
/// that they are written as, or else as strings.
Json node_json(const Node& node);

}  // namespace entrywise
