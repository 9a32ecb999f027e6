#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// The document in a YAML file, or in standard input for `-`. Faults carry the path as it is given here, or
/// `standard input`.
Outcome<Node> read_document_file(const std::string& path);

/// What faults call the file of a path.
std::string shown_path(const std::string& path);

}  // namespace entrywise
