#pragma once

#include "reading/fields.hpp"
#include "recipe/ingredients.hpp"

namespace entrywise {

// What ingredient files and recipes both say of an ingredient is read here, so that both have the same
// limits.

/// Alpha acids, and beta acids, of hops and hop extracts. The limit leaves room for extracts (working value).
std::optional<Uncertain<Share>> read_acids(Fields& fields, std::string_view key, bool is_extract = false);

/// A hop's family, one of the words that styles use.
std::optional<std::string> read_hop_family(Fields& fields);

}  // namespace entrywise
