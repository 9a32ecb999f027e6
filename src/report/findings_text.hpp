#pragma once

#include <string>

#include "advice/check.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// What a judge may note, dearest first: the note, where it comes from and what would bring it in. Empty if
/// there is nothing.
std::string findings_text(const Check& check, const TextStyle& style);

/// What the beer does right by its style, a line each. Empty if there is nothing to name.
std::string strengths_text(const Check& check, const TextStyle& style);

}  // namespace entrywise
