#pragma once

#include <string>

#include "style/phrase.hpp"

namespace entrywise {

struct ExplainedRemark;
struct Explanation;

/// What a judge could write to the brewer: what pleased, what was perceived and how it stands to the style,
/// the likeliest cause and what would bring it in, in whole sentences. Only what the notes say is written of;
/// it takes nothing for granted of what the brewer did, and gives no points.
std::string feedback_on(const Explanation& explanation, const PhraseBook& phrases);

/// An ingredient or two that a remark comes from, or what holds it down, as a sentence; else the number
/// behind it; empty where nothing is known.
std::string likely_cause(const ExplainedRemark& remark);

}  // namespace entrywise
