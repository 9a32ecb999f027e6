#pragma once

#include <optional>
#include <string>
#include <vector>

#include "advice/caution.hpp"
#include "brewing/beer.hpp"
#include "judging/impression.hpp"
#include "judging/sheet.hpp"
#include "judging/tariff.hpp"
#include "judging/tasting.hpp"
#include "judging/verdict.hpp"
#include "recipe/recipe.hpp"
#include "sensing/profile.hpp"
#include "style/handbook.hpp"
#include "style/style.hpp"

namespace entrywise {

/// A finding in words: what a judge would write, where it comes from in the recipe, and what would bring it
/// in.
struct AdvisedFinding {
    Finding finding;
    std::string note;
    std::vector<std::string> causes;       ///< ingredients and settings with their share, largest first
    std::vector<std::string> corrections;  ///< changes to the recipe, the least first; may be empty
    std::string mended_by;                 ///< id of the finding whose first change mends this too, or empty
};

/// A strength in words.
struct AdvisedStrength {
    Strength strength;
    std::string note;
};

/// A recipe held against a style: everything a report shows. Reports draw it and decide nothing.
struct Check {
    Recipe recipe;
    Style style;                      ///< what was judged by: that of the entry, or it and its base as one
    std::optional<Style> base_style;  ///< declared and used
    std::string basis;                ///< on what a style that leaves things open was judged; else empty
    Beer beer;
    Profile profile;
    Sheet sheet;
    std::vector<AdvisedFinding> findings;
    std::vector<AdvisedStrength> strengths;
    std::vector<Caution> cautions;  ///< of the recipe, then of the corrections
};

/// Works a recipe out and holds it against a style; one that varies, against the base style with what it asks
/// besides.
Check check(const Recipe& recipe, const Style& style, const Handbook& handbook,
            const std::optional<Style>& base_style = {});

/// A tasting held against a style, or against a style that varies and the base style declared for it, before
/// what was found is put in words.
struct Judged {
    Style style;
    std::optional<Style> base_style;
    std::string basis;
    Verdict verdict;
};

Judged judged(const Tasting& tasting, const Impression& impression, const Style& style,
              const std::optional<Style>& base_style, const Handbook& handbook, const Tariff& tariff);

/// The check of a tasting that was judged, without what takes trials of its recipe: findings come with their
/// notes, but without causes and corrections.
Check check_at_a_glance(Tasting tasting, Judged judged, const Handbook& handbook);

}  // namespace entrywise
