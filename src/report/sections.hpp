#pragma once

#include <array>
#include <string>
#include <string_view>

#include "style/attribute.hpp"

namespace entrywise {

/// The sections in the order of the sheet.
inline constexpr std::array<Section, section_count> sheet_sections{
    Section::aroma, Section::appearance, Section::flavor, Section::mouthfeel, Section::overall};

/// The section as a sheet prints it: `overall impression`.
std::string_view title_of(Section section);

/// The attribute's word as a sentence takes it: `head retention`.
std::string spoken(std::string_view attribute_word);

}  // namespace entrywise
