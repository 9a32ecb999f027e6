#pragma once

#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A style as a place in the plane of strength and bitterness.
struct PlacedStyle {
    std::string code;
    Range<AlcoholByVolume> alcohol;
    Range<Bitterness> bitterness;
    bool marked = false;  ///< the one that it is about
};

/// The places of those of the styles that print both ranges.
std::vector<PlacedStyle> placed(const std::vector<Style>& styles, const Style* marked);

/// Styles as boxes in the plane of strength and bitterness, with what the beer may be as a cloud of dots and
/// a ring at its middle. The bitterness is that of the laboratory, as guides print it.
std::string plane_picture(const std::vector<PlacedStyle>& styles, const Beer& beer);

}  // namespace entrywise
