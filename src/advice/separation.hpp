#pragma once

#include <string>
#include <vector>

#include "advice/ranking.hpp"

namespace entrywise {

/// The findings of the first so many styles, each with what it costs in every one of them: those that cost
/// one at least half a point more than another, most separating first, at most six.
std::vector<Separation> separations_of(const std::vector<RankedStyle>& styles, std::size_t shown);

/// The styles of the first so many that one finding alone keeps from leading, in words.
std::vector<std::string> near_misses_of(const std::vector<RankedStyle>& styles, std::size_t shown);

}  // namespace entrywise
