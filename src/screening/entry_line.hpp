#pragma once

#include <string>

#include "base/line_reader.hpp"
#include "screening/entry.hpp"

namespace entrywise {

/// The longest line of entries that is read: several recipes of the largest size that files of the trade
/// have; a working value.
inline constexpr std::size_t most_entry_line_bytes = 1048576;

/// The entry that a line of JSON says, an object with the keys that `entry_field` knows: `recipe` is a recipe
/// file or a BeerJSON document as an object, or the path of a file; `declares` an object or a text. Other
/// keys are handed on. A line that is none of this makes an entry with a fault; one without a number is
/// called by its line.
ClubEntry entry_of_line(const InputLine& line, const std::string& file);

}  // namespace entrywise
