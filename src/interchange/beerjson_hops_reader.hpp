#pragma once

#include <vector>

#include "interchange/beerjson_timing_reader.hpp"
#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"

namespace entrywise {

/// Reads a hop addition into the draft.
void read_beerjson_hop(const Node& node, const std::vector<BoilStep>& steps, Draft& draft, ExchangeLog& log);

}  // namespace entrywise
