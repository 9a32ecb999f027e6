#pragma once

#include <string>

#include "advice/check.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// What a judge may note, dearest first: the note, where it comes from and what would bring it in. Empty if
/// there is nothing.
std::string findings_text(const Check& check, const TextStyle& style);

/// `flavor: bitterness above the style`.
std::string title_of(const Finding& finding);

}  // namespace entrywise
