#pragma once

#include <cstddef>
#include <vector>

#include "brewing/kettle_bitterness.hpp"
#include "brewing/process.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

/// The temperature that wort boils at.
inline Temperature boiling_temperature() {
    return celsius(100.0);
}

/// When a hop addition meets the hot wort.
struct HopMoment {
    Duration boil;  ///< before the end of the boil; zero if not boiled
    std::size_t joins_at_step = 0;
};

/// The stands of a recipe after the boil, hottest first, as steps, and when each hop addition of the process
/// joins. What no stand holds is chilled through the temperatures at which hops still isomerize.
struct HotSchedule {
    std::vector<TemperatureStep> stands;
    std::vector<HopMoment>
        moments;  ///< in the order of the process's hop additions; dry hops too, with no use
};

/// Lays out the hot side of a process. A whirlpool addition without a temperature stands at 85 °C, without a
/// time for 20 min; a boil addition without a time boils 60 min if its hop is for bittering and 15 min
/// otherwise (common practice). Mash hops and first wort hops are in the kettle for the whole boil.
HotSchedule hot_schedule(const Process& process);

/// The hot side with the chill that follows: natural cooling from the boil, or from the last stand, to 65 °C.
HotSide hot_side(const HotSchedule& schedule, Duration time_to_cool);

}  // namespace entrywise
