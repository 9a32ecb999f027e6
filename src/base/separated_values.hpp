#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.hpp"

namespace entrywise {

/// A field of a table with the place where it starts.
struct TableField {
    std::string text;
    Position position;
};

using TableRow = std::vector<TableField>;

/// The rows of a table whose fields stand apart by one character: RFC 4180, Common Format and MIME Type for
/// Comma-Separated Values (CSV) Files, 2005, with another separator as well. A field in quotation marks may
/// hold separators, line ends and, doubled, quotation marks. Lines end with a line feed, with a carriage
/// return before it or not; rows without any text are left out. A quotation mark inside a plain field, text
/// behind a closing one, one that is never closed, and more than `most_fields` fields are faults.
Outcome<std::vector<TableRow>> separated_values(std::string_view text, char separator,
                                                const std::string& file, std::size_t most_fields);

}  // namespace entrywise
