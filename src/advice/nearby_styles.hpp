#pragma once

#include <cstddef>
#include <vector>

#include "brewing/beer.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The styles, at most so many, whose ranges of strength and bitterness a beer's middle lies nearest to, in
/// steps of the palate: a percent of alcohol, a quarter of the bitterness (working values). Inside several,
/// the one whose middle is nearest comes first. Styles that print no range of the two are left out, and so is
/// the one that is `entered`.
std::vector<Style> nearby_styles(const Beer& beer, const std::vector<Style>& styles, const Style& entered,
                                 std::size_t at_most);

}  // namespace entrywise
