#pragma once

#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"
#include "interchange/record.hpp"

namespace entrywise {

// How it is mashed, fermented, conditioned and packaged, into the draft.
void read_beerjson_mash(Record& recipe, Draft& draft, ExchangeLog& log);
void read_beerjson_fermentation(Record& recipe, Draft& draft, ExchangeLog& log);
void read_beerjson_packaging(Record& recipe, Draft& draft, ExchangeLog& log);

}  // namespace entrywise
