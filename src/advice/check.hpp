#pragma once

#include <string>
#include <vector>

#include "advice/caution.hpp"
#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "sensing/profile.hpp"
#include "style/phrase.hpp"
#include "style/score_sheet.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A finding in words: what a judge would write, where it comes from in the recipe, and what would bring it
/// in.
struct AdvisedFinding {
    Finding finding;
    std::string note;
    std::vector<std::string> causes;       ///< ingredients and settings with their share, largest first
    std::vector<std::string> corrections;  ///< changes to the recipe, the least first; may be empty
};

/// A recipe held against a style: everything a report shows. Reports draw it and decide nothing.
struct Check {
    Recipe recipe;
    Style style;
    Beer beer;
    Profile profile;
    Sheet sheet;
    std::vector<AdvisedFinding> findings;
    std::vector<Caution> cautions;
};

/// Works a recipe out and holds it against a style.
Check check(const Recipe& recipe, const Style& style, const ScoreSheet& score_sheet,
            const Perception& perception, const PhraseBook& phrases);

}  // namespace entrywise
