#pragma once

#include "brewing/beer.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// The numbers of a beer, each {"median", "low", "high", "unit"} with one decimal more than text prints.
Json beer_json(const Beer& beer);

}  // namespace entrywise
