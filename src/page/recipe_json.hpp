#pragma once

#include "reading/node.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// A document as the page holds it: maps and lists as they are, and every value as the text that it is
/// written with, so that `1.060` keeps its last digit. Reading it again gives the document, places aside.
Json page_json(const Node& document);

}  // namespace entrywise
