#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "base/fault.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// Limits of a data file: working values, far above what any honest file needs; `deepest_nesting` is the
/// third.
inline constexpr std::size_t most_document_bytes = 1048576;
inline constexpr std::size_t most_document_nodes = 200000;

/// The one document that a YAML text holds, or everything that keeps it from being read, each with its place.
/// Lists, maps, plain, quoted and block texts are read; what makes a file mean something other than what
/// stands there is refused: a key given twice, a second document, an alias, an anchor, a tag, a merge key, a
/// key that is no text, a key or an item without a value, bytes that are not UTF-8, control characters, a
/// byte order mark inside, tabs in the indentation. `file` is the name that the faults carry. Never throws
/// for what is in the text.
Outcome<Node> yaml_document(std::string_view text, const std::string& file);

}  // namespace entrywise
