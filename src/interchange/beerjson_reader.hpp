#pragma once

#include <vector>

#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"
#include "interchange/named_record.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// The recipes of a BeerJSON 1.0 document. None at all is a fault.
std::vector<NamedRecord> beerjson_recipes(const Node& document, ExchangeLog& log);

/// One of them as a draft.
///
/// Where the standard leaves room, what the published examples do holds: the `time` of an addition without a
/// `duration` is how long it stays, a step is counted from one, and a potential of 1038 is 1.038. Gravities,
/// alcohol, bitterness and color are what the file states of the beer, not measurements: they are told and
/// estimated anew.
/// Source: BeerJSON, JSON schema and examples, version 1.0.
Draft beerjson_draft(const Node& recipe, ExchangeLog& log);

}  // namespace entrywise
