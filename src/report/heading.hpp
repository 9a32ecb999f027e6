#pragma once

#include <string>
#include <string_view>

#include "report/terminal.hpp"

namespace entrywise {

/// The head of a report: what it is about at the left, a second thing at the right, a line of small print
/// below and a rule. Texts are shown as they are safe to be shown; what does not fit is cut.
std::string heading(std::string_view left, std::string_view right, std::string_view small_print,
                    const TextStyle& style);

}  // namespace entrywise
