#pragma once

#include <string>

#include "brewing/beer.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// What each line of the recipe gives: `name`, and for each of gravity, color and bitterness its `share` in
/// words and its `picture`, or neither.
Json source_values(const Beer& beer);

/// Bitterness by other formulas, in words.
std::string other_bitterness_words(const Beer& beer);

}  // namespace entrywise
