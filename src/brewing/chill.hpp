#pragma once

#include <vector>

#include "brewing/hot_side.hpp"
#include "brewing/isomerization.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

/// What the chill after the boil, or after the last stand, does to hop acids, for any time that it may take
/// between 1 and 60 min: the steps of `hot_side` worked out at six times and a polynomial through them. What
/// becomes of hop acids is as smooth in that time as a sum of slow exponentials, so this differs from the
/// steps themselves by less than a millionth. For working out many draws of one recipe.
class Chill {
  public:
    static constexpr Duration shortest = 1.0 * minute;
    static constexpr Duration longest = 60.0 * minute;

    explicit Chill(const HotSchedule& schedule);

    /// For one time and no other, worked out at that one.
    Chill(const HotSchedule& schedule, Duration only_time);

    /// Times beyond the shortest and the longest are taken as these.
    Isomerization over(Duration time_to_cool) const;

  private:
    std::vector<double> at_;                         ///< minutes
    std::vector<Isomerization> divided_difference_;  ///< of Newton's form
};

}  // namespace entrywise
