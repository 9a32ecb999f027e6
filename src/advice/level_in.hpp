#pragma once

#include <string>

#include "judging/tasting.hpp"
#include "style/attribute.hpp"

namespace entrywise {

/// The median level of an attribute, on its scale, or of the color in SRM where the section has no attribute
/// of that name.
double level_in(const Tasting& tasting, Section section, const std::string& attribute);

}  // namespace entrywise
