#pragma once

#include <optional>
#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "recipe/recipe.hpp"
#include "style/perception.hpp"
#include "style/phrase.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What would bring a finding in: in words, and as the recipe with it made, where it was worked out.
struct Correction {
    std::string told;
    std::optional<Recipe> recipe;
    bool goes_half_way = false;  ///< or further, as nothing brings it in alone
};

/// How far a correction must go to be told.
enum class Reach { all_the_way, half_way_too };

/// The least changes that bring what a finding is about back to what the style accepts, each on its own, each
/// worked out through the whole model: grams, degrees, volumes. None takes the numbers of the style further
/// out, all together (`numbers_are_kept`). Where none reaches it, the first that goes half of the way or
/// more, if that is asked for, and general advice in words. At most two. `now` is the recipe at its middle,
/// `beer` what it gives as it stands.
std::vector<Correction> corrections_of(const Finding& finding, const Tasting& now, const Beer& beer,
                                       const Style& style, const Perception& perception,
                                       const PhraseBook& phrases, Reach reach);

/// What usually brings such a finding in, in words; nothing where nothing is known.
std::vector<Correction> advice_in_general(const Finding& finding, const PhraseBook& phrases);

std::vector<std::string> in_words(const std::vector<Correction>& corrections);

/// A recipe with every uncertain input at its middle, which is what corrections are worked out by.
Tasting taste_at_middle(const Recipe& recipe, const Perception& perception);

/// Whether a recipe that was changed for another finding is brought in here too: from further out to at least
/// half as far inside as a correction of this finding would end. `now` and `changed` are the two at their
/// middle, `beer` what the recipe gives as it stands.
bool is_brought_in(const Finding& finding, const Tasting& now, const Tasting& changed, const Beer& beer,
                   const Style& style, const Perception& perception);

}  // namespace entrywise
