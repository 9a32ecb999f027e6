#pragma once

#include <string>

#include "base/fault.hpp"
#include "reading/node.hpp"
#include "style/phrase.hpp"

namespace entrywise {

/// The phrases of a file of the format `entrywise/phrases/1`.
Outcome<PhraseBook> read_phrases(const Node& document, const std::string& file);

}  // namespace entrywise
