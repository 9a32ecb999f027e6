#pragma once

#include <optional>
#include <string>
#include <vector>

#include "advice/attempt.hpp"
#include "advice/caution.hpp"
#include "advice/change.hpp"
#include "advice/mending_means.hpp"
#include "advice/ranking.hpp"
#include "base/number.hpp"
#include "brewing/beer.hpp"
#include "judging/sheet.hpp"
#include "recipe/recipe.hpp"
#include "style/handbook.hpp"
#include "style/style.hpp"

namespace entrywise {

struct MendingWish {
    Stage stage = Stage::recipe;
    double target =
        2.0;  ///< points at risk that are few enough: hardly what judges differ by (working value)
};

/// The changes that together bring a recipe in, and what comes of them, worked out over all draws.
struct Proposal {
    std::vector<Change> changes;
    Attempt attempt;  ///< the mended recipe, and what is done to the finished beer besides
    Beer beer;
    Sheet sheet;
    double disruption = 0.0;
    bool brings_in_new = false;
    std::vector<std::string> no_longer_measured;  ///< measured numbers that the changes move
    std::vector<Caution> cautions;                ///< those that the recipe does not call for by itself
};

/// A recipe, what is at risk as it stands, and up to three ways to bring that down, the least change first.
struct Mending {
    Recipe recipe;
    Style style;
    std::optional<Style> base_style;
    Stage stage = Stage::recipe;
    Beer beer;
    Sheet sheet;              ///< without what the entry form leaves out, which no change to the beer mends
    double undeclared = 0.0;  ///< points that this costs besides
    double wanted = 0.0;      ///< the points at risk that were asked for
    double target = 0.0;  ///< those that the proposals keep to: half of what is at risk where the wanted ones
                          ///< cannot be reached
    std::vector<Proposal> proposals;
    std::vector<RankedStyle> elsewhere;  ///< where else to enter a finished beer (`better_places`), or none

    /// As printed, with one decimal.
    bool is_in_already() const { return rounded(sheet.total.median, 1) <= wanted; }
};

/// Looks for the smallest sets of at most four changes that bring the points at risk to the target. Each
/// proposal is rounded to what is weighed and set, then worked out and judged anew; one that does not hold is
/// not there.
///
/// At stage `recipe`, what was measured and would be moved by the changes is dropped and estimated, as the
/// next brew will not repeat it. At stage `brewed`, what was measured holds for the beer as it is.
Mending mend(const Recipe& recipe, const Style& style, const Handbook& handbook, const MendingMeans& means,
             const MendingWish& wish, const std::optional<Style>& base_style = {});

/// The styles in which a beer would lose at least a point less than in the one it was mended for: of the
/// first five of a ranking, at most three, the nearest first.
std::vector<RankedStyle> better_places(const Mending& mending, const std::vector<Style>& styles,
                                       const Handbook& handbook);

}  // namespace entrywise
