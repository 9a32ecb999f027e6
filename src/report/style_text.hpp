#pragma once

#include <string>
#include <vector>

#include "report/terminal.hpp"
#include "style/style.hpp"

namespace entrywise {

/// Styles, a line each: code, name and the numbers that the guide prints.
std::string style_list_text(const std::vector<Style>& styles, const TextStyle& style);

/// One style: its ranges, what a judge accepts in each section in the words of the scales, what the entry
/// must declare, and what is customary.
std::string style_text(const Style& shown_style, const TextStyle& style);

}  // namespace entrywise
