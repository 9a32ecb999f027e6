#pragma once

#include <string>

#include "judging/style_comparison.hpp"
#include "report/terminal.hpp"
#include "style/phrase.hpp"

namespace entrywise {

/// Two styles side by side: what separates them, the numbers and what of them both accept, where the words
/// differ otherwise, what is customary or declared in one of them, what is the same, and last whether a beer
/// can be in both.
std::string style_comparison_text(const StyleComparison& comparison, const PhraseBook& phrases,
                                  const TextStyle& style);

}  // namespace entrywise
