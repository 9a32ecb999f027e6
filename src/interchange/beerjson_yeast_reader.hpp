#pragma once

#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"

namespace entrywise {

/// Reads an addition of yeast or bacteria into the draft.
void read_beerjson_culture(const Node& node, Draft& draft, ExchangeLog& log);

}  // namespace entrywise
