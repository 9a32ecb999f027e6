#pragma once

#include <vector>

#include "advice/lever.hpp"

namespace entrywise {

/// The hop or seasoning that gives most of what the finding is about.
std::vector<Lever> largest_source(const Finding& finding, const Recipe& recipe, const Beer& beer);

/// For aroma and flavor of hops: less of those that give it; or more of the one that does, or a dry hop where
/// the style bears one, or late hops.
std::vector<Lever> levers_on_late_hops(const Finding& finding, const Recipe& recipe, const Beer& beer,
                                       const Style& style);

/// For bitterness and balance: the hops that are there for bitterness, so that aroma stays as it is.
std::vector<Lever> levers_on_bittering_hops(const Finding& finding, const Recipe& recipe, const Beer& beer);

/// For creaminess: the unmalted grain or the lactose that gives most of it.
std::vector<Lever> lever_on_creamy_grain(const Finding& finding, const Recipe& recipe, const Beer& beer);

}  // namespace entrywise
