#pragma once

#include <cstddef>
#include <vector>

#include "brewing/beer.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The styles, at most so many, whose ranges of strength, bitterness and color a beer's middle lies nearest
/// to, in steps of the palate: a percent of alcohol, a quarter of the bitterness, a fifth of the color
/// (working values). Inside several, the one whose middle is nearest comes first. Styles that print no closed
/// range of strength and bitterness are left out, and so are variants of a style and the one that is
/// `entered`.
std::vector<Style> nearby_styles(const Beer& beer, const std::vector<Style>& styles, const Style& entered,
                                 std::size_t at_most);

}  // namespace entrywise
