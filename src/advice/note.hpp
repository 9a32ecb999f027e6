#pragma once

#include <optional>
#include <string>

#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "style/phrase.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The note a judge would write on a finding: what is perceived and how strongly, what the style asks for,
/// and what that does to the beer. Where it is the base of a specialty style that asks for it, the note names
/// the base.
std::string note_on(const Finding& finding, const Beer& beer, const Style& style, const PhraseBook& phrases,
                    const std::optional<Style>& base_style = {});

/// What a judge would write first: something that the beer does right by its style.
std::string note_on(const Strength& strength, const PhraseBook& phrases);

/// The words for what a finding is about; for a style that asks for some of it, those that fit there in place
/// of those for a style that wants none.
Phrase phrase_on(const Finding& finding, const PhraseBook& phrases);

/// The levels that a finding's style accepts, in the words of the scale: `low to medium-low`.
std::string accepted_in_words(const Finding& finding);

/// Whether the level is more likely inside than outside of what the style accepts, so that the note says
/// `may`.
bool is_likely_inside(const Finding& finding);

/// The level that a finding's beer is at, in words.
std::string level_in_words(const Finding& finding);

}  // namespace entrywise
