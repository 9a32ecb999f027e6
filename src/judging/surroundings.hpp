#pragma once

#include <string>
#include <vector>

#include "judging/contrast.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A style that a beer may rather be.
struct Neighbor {
    std::string code;
    std::string name;
    std::string said;  ///< what sets it apart, as the style's file says; empty where it says nothing
    std::vector<Contrast> apart;  ///< the style first, the neighbor second; what separates most comes first
};

/// Where a style stands in its guide.
struct Surroundings {
    std::vector<Style> variants;  ///< those whose codes continue the style's own: `25B-table-pale` of `25B`
    std::vector<Neighbor> neighbors;
};

/// The neighbors are those that the style's file names. Where it names none, they are the nearest by all that
/// both styles lay down, the nearest first, at most four; a style that lays down little has none.
Surroundings surroundings_of(const Style& style, const std::vector<Style>& guide);

}  // namespace entrywise
