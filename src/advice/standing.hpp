#pragma once

#include <optional>
#include <string>
#include <vector>

#include "advice/heard.hpp"
#include "judging/sheet.hpp"
#include "judging/tasting.hpp"
#include "style/score_sheet.hpp"
#include "style/style.hpp"

namespace entrywise {

/// Where a beer stands on what a remark says.
///
/// `explained` is the chance, over the draws of everything uncertain in the beer and in the maps to what is
/// sensed, that its level lies on the side that the remark says: above the highest level that the style
/// accepts, or below the lowest; for bitterness, alcohol and color also by the number where the number is
/// further out. Where no style is given, where it says nothing of the attribute, or where the recipe leaves
/// the attribute open, the middle of the scale stands for the style (for color 15 SRM, between pale and dark;
/// a working value). It says nothing of how far out the level is, nor of whether a judge would notice; and it
/// cannot tell of execution, so that a fault is never explained. A level at the very end of what is accepted,
/// where a judge may well remark on it, comes out at about a half.
struct Standing {
    HeardRemark remark;
    Finding finding;        ///< the remark, or what stands for it, as a finding of this beer
    bool by_style = false;  ///< else against the middle of the scale
    double explained = 0.0;
    std::vector<bool> on_that_side;  ///< draw by draw
};

Standing standing_on(const HeardRemark& remark, const Tasting& tasting, const std::optional<Style>& style,
                     const ScoreSheet& score_sheet);

/// Its level in words: `medium-low`, `12 SRM`.
std::string level_in_words(const Standing& standing);

}  // namespace entrywise
