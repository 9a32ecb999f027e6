#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "base/fault.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// How many values a document of an exchange format may hold: a working value, far above any honest file.
inline constexpr std::size_t most_exchange_nodes = 400000;

/// The document of a JSON text (RFC 8259, The JavaScript Object Notation Data Interchange Format, 2017), each
/// value with its place. A string is a quoted scalar; a number keeps the digits it is written with; `true`,
/// `false` and `null` are plain scalars of those names. A key given twice in one object, nesting deeper than
/// `deepest_nesting`, more than `most_exchange_nodes` values, a number that no double holds and anything that
/// is no JSON are faults. Never throws for what is in the text.
Outcome<Node> json_document(std::string_view text, const std::string& file);

}  // namespace entrywise
