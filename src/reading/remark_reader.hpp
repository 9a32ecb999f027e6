#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/node.hpp"
#include "style/remark.hpp"

namespace entrywise {

/// The remarks of a file of the format `entrywise/remarks/1`. Every attribute that a remark means must be one
/// that is judged, and a phrase stands once in the file.
Outcome<RemarkBook> read_remarks(const Node& document, const std::string& file);

}  // namespace entrywise
