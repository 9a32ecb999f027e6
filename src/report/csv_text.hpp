#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace entrywise {

/// A row of comma-separated values (RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV)
/// Files, 2005), with its line end: fields in quotation marks where they need them.
std::string csv_row(const std::vector<std::string>& fields);

/// A text from outside as a field: one that a spreadsheet would take for a formula gets an apostrophe before
/// it, and what could steer a terminal is made visible. Never for numbers.
std::string csv_field(std::string_view text);

}  // namespace entrywise
