#pragma once

#include <string>
#include <vector>

#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "style/kin.hpp"

namespace entrywise {

/// Hops, malt or yeast that smell of other things than the style names, however strong they are.
struct KindMiss {
    Finding finding;                 ///< `hop_kind`, `malt_kind`, `ester_kind` or `phenol_kind` in the aroma
    std::vector<std::string> found;  ///< what the style does not name, strongest first
    std::vector<std::string> asked;  ///< what it names
    std::vector<SourceShare> sources;  ///< the ingredients that give it, largest share first
};

/// Compares what the ingredients are said to smell of with what the style names, kin counted as the same.
/// Only what is sensed is compared, and only what the style names any words for. Hops and yeast that are
/// usual for the style are of its kind. Malt is compared by what crystal and roasted malts give, since pale
/// malt tastes of grain everywhere; the fruit that a style names is at home in its malt as well.
std::vector<KindMiss> kind_misses(const Recipe& recipe, const Impression& beer, const Style& style,
                                  const ScoreSheet& score_sheet, const Kin& kin);

}  // namespace entrywise
