#pragma once

#include "advice/explain.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// An explanation as a document of the format `entrywise/explain/1`.
Json explain_json(const Explanation& explanation);

}  // namespace entrywise
