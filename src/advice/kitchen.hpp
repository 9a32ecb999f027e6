#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "advice/attempt.hpp"
#include "advice/mending_means.hpp"
#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "judging/tasting.hpp"
#include "style/handbook.hpp"

namespace entrywise {

/// Works attempts to mend a recipe out over one count of draws, the same draws for each, so that attempts
/// differ by what is changed alone.
class Kitchen {
  public:
    /// All that is named must outlive the kitchen.
    Kitchen(const Recipe& recipe, const MendingMeans& means, const Handbook& handbook, Stage stage,
            std::size_t draws);

    /// Brews an attempt, blends and thins it, and tastes it. What was measured holds as far as the stage and
    /// the changes leave it true.
    Tasting taste_of(Attempt attempt);

  private:
    void settle_measurements(Recipe& changed) const;
    const Beer& other_beer(std::size_t index);

    const Recipe& recipe_;
    const MendingMeans& means_;
    const Handbook& handbook_;
    Stage stage_;
    Deviates deviates_;
    std::vector<std::optional<Beer>> other_beers_;
};

}  // namespace entrywise
