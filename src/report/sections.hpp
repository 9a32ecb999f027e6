#pragma once

#include <string>
#include <string_view>

#include "style/attribute.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// The section as a sheet prints it: `overall impression`.
std::string_view title_of(Section section);

/// The points of the whole sheet.
double all_points_of(const ScoreSheet& score_sheet);

/// The attribute's word as a sentence takes it: `head retention`.
std::string spoken(std::string_view attribute_word);

}  // namespace entrywise
