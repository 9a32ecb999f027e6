#pragma once

#include <string>
#include <string_view>

#include "base/fault.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// The root element of an XML text (W3C, Extensible Markup Language 1.0, 5th edition, 2008) under a map of
/// its name alone. An element that holds elements is a map in which names may repeat; any other is a quoted
/// scalar, and an empty one is not kept. Attributes, comments and processing instructions say nothing in
/// record sets and are not kept. UTF-8 is read, and ISO-8859-1 where the declaration names it. A document
/// type declaration is refused, so that no entity but the five of XML is ever expanded; nothing outside the
/// text is ever opened. Nesting deeper than `deepest_nesting` and more than `most_exchange_nodes` elements
/// are faults.
Outcome<Node> xml_document(std::string_view bytes, const std::string& file);

}  // namespace entrywise
