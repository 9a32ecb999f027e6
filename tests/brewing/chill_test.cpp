#include "brewing/chill.hpp"

#include <doctest/doctest.h>

#include "brewing/kettle_bitterness.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

/// The steps themselves, without a polynomial.
Isomerization step_by_step(const HotSchedule& schedule, double minutes) {
    HotSide side = hot_side(schedule, minutes * minute);
    side.after_boil.erase(side.after_boil.begin(),
                          side.after_boil.begin() + static_cast<std::ptrdiff_t>(schedule.stands.size()));
    return HotSideKinetics(side).after_boil();
}

}  // namespace

TEST_CASE("a chill is what its steps make, whatever time it takes") {
    HotSchedule stand_at_85;
    stand_at_85.stands.push_back({20.0 * minute, celsius(85.0)});
    for (const HotSchedule& schedule : {HotSchedule(), stand_at_85}) {
        const Chill chill(schedule);
        for (double minutes = 1.0; minutes <= 60.0; minutes += 0.7) {
            const Isomerization exact = step_by_step(schedule, minutes);
            const Isomerization near = chill.over(minutes * minute);
            CHECK(within(near.alpha_left, exact.alpha_left, 1e-6));
            CHECK(within(near.alpha_to_iso, exact.alpha_to_iso, 1e-6));
            CHECK(within(near.iso_left, exact.iso_left, 1e-6));
        }
    }
}

TEST_CASE("a chill takes no less than a minute and no more than an hour") {
    const Chill chill{HotSchedule()};
    CHECK(chill.over(0.0 * minute).alpha_to_iso == chill.over(1.0 * minute).alpha_to_iso);
    CHECK(chill.over(200.0 * minute).alpha_to_iso == chill.over(60.0 * minute).alpha_to_iso);
}
