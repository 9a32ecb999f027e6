#pragma once

#include <string_view>

#include "style/attribute.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// The section as a sheet prints it: `overall impression`.
std::string_view title_of(Section section);

/// The points of the whole sheet.
double all_points_of(const ScoreSheet& score_sheet);

}  // namespace entrywise
