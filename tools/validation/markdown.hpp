#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace entrywise {

// The pieces of a page in Markdown, broken between words where the other documents of the project are.

std::string paragraph(const std::string& text);
/// Of a list.
std::string item(const std::string& text);

/// Of a table: its head, whose first columns hold text and the others numbers, and a row.
std::string head(const std::vector<std::string>& cells, std::size_t of_text = 1);
std::string row(const std::vector<std::string>& cells);

/// `+1.2`, `-1.2`, `0.0`.
std::string with_sign(double number, int decimals);
/// `1.2 IBU`; the text alone where there is no unit.
std::string with_unit(const std::string& text, const std::string& unit);

}  // namespace entrywise
