#pragma once

#include <string>
#include <string_view>

#include "advice/explain.hpp"
#include "style/phrase.hpp"

namespace entrywise {

// What every form of an explanation says in the same words.

/// `the recipe explains it, 86 %`.
std::string verdict_words(const ExplainedNote& note);

/// `Bitterness above the style (86 %)`.
std::string remark_title(const ExplainedRemark& remark, const Explanation& explanation);

/// Where the beer stands on a remark, section by section, and what that is held against.
std::string standing_words(const ExplainedRemark& remark, const Explanation& explanation,
                           const PhraseBook& phrases);

/// Why a part of a note is not understood.
std::string unheard_words(const HeardClause& clause);

/// `as expected`, `higher than expected` or `lower than expected`.
std::string_view parting_words(const ScoreComparison& comparison);

/// What it comes to.
std::string explain_summary_words(const Explanation& explanation);

}  // namespace entrywise
