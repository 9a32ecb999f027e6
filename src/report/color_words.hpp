#pragma once

#include <string>

#include "quantity/quantities.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A color as it is called at the table, from straw to black. Names: Beer Judge Certification Program, Beer
/// Style Guidelines, 2021, introduction; where one passes into the next: working values between those given
/// there.
std::string_view color_word(Color color);

/// The colors of a range: `gold to copper`; an open end takes the word of the end of the scale.
std::string color_words(const Range<Color>& range);

}  // namespace entrywise
