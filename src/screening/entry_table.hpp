#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/fault.hpp"
#include "screening/entry.hpp"

namespace entrywise {

/// The entries of a table, a line each, below a line of column names as `entry_field` knows them. `recipe` is
/// needed and names a file, from the table's folder on; columns of other names are handed on. Fields stand
/// apart by commas, or by semicolons or tabs where the first line has those and no comma. A line with more
/// fields than names, one without a recipe and an entry's number that was given before make an entry with a
/// fault; a table that is none is a fault.
Outcome<std::vector<ClubEntry>> read_entry_table(std::string_view text, const std::string& file);

/// The size up to which tables are read: far above any competition; a working value.
inline constexpr std::size_t most_table_bytes = 67108864;

}  // namespace entrywise
