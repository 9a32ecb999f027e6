#pragma once

#include <string>

#include "reading/node.hpp"

namespace entrywise {

/// The text of a recipe file for a document of one: its keys in the order in which recipe files are read, an
/// ingredient a line. Reading it gives the document again, places aside.
std::string recipe_file_text(const Node& document);

}  // namespace entrywise
