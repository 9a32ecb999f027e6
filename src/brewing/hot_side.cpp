#include "brewing/hot_side.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

constexpr double isomerizes_from_celsius = 65.0;
constexpr double usual_whirlpool_celsius = 85.0;
constexpr Duration usual_whirlpool_time = 20.0 * minute;
constexpr Duration usual_bittering_time = 60.0 * minute;
constexpr Duration usual_late_time = 15.0 * minute;

/// One whirlpool addition: at which temperature, and how long before the end of the stand at it.
struct Stand {
    Temperature temperature;
    Duration time;

    friend bool operator==(const Stand&, const Stand&) = default;
};

Stand stand_of(const HopAddition& addition) {
    const Temperature warmest = boiling_temperature();
    const Temperature temperature = addition.temperature.value_or(celsius(usual_whirlpool_celsius));
    return {std::min(temperature, warmest), addition.time.value_or(usual_whirlpool_time)};
}

bool comes_earlier(const Stand& first, const Stand& second) {
    return first.temperature > second.temperature ||
           (first.temperature == second.temperature && first.time > second.time);
}

std::vector<Stand> stands_in_order(const std::vector<HopAddition>& hops) {
    std::vector<Stand> stands;
    for (const HopAddition& addition : hops) {
        if (addition.use == HopUse::whirlpool) {
            stands.push_back(stand_of(addition));
        }
    }
    std::sort(stands.begin(), stands.end(), comes_earlier);
    stands.erase(std::unique(stands.begin(), stands.end()), stands.end());
    return stands;
}

/// The time from one addition of a stand to the next of the same temperature, or to the stand's end.
Duration until_next(const std::vector<Stand>& stands, std::size_t index) {
    const bool same_stand =
        index + 1 < stands.size() && stands[index + 1].temperature == stands[index].temperature;
    return same_stand ? stands[index].time - stands[index + 1].time : stands[index].time;
}

Duration boil_of(const HopAddition& addition, Duration whole_boil) {
    if (addition.use == HopUse::mash || addition.use == HopUse::first_wort) {
        return whole_boil;
    }
    const bool bittering = addition.hop.purpose == HopPurpose::bittering;
    const Duration usual = bittering ? usual_bittering_time : usual_late_time;
    return addition.time.value_or(std::min(usual, whole_boil));
}

}  // namespace

HotSchedule hot_schedule(const Process& process) {
    const std::vector<Stand> stands = stands_in_order(process.hops);
    HotSchedule schedule;
    for (std::size_t index = 0; index < stands.size(); ++index) {
        schedule.stands.push_back({until_next(stands, index), stands[index].temperature});
    }
    for (const HopAddition& addition : process.hops) {
        if (addition.use == HopUse::whirlpool) {
            const auto found = std::find(stands.begin(), stands.end(), stand_of(addition));
            schedule.moments.push_back({0.0 * minute, static_cast<std::size_t>(found - stands.begin())});
        } else {
            schedule.moments.push_back({boil_of(addition, process.boil_time), 0});
        }
    }
    return schedule;
}

HotSide hot_side(const HotSchedule& schedule, Duration time_to_cool) {
    // The rate at which wort left to itself would take this time from the boil to 65 °C, by the law of
    // `naturally_cooled`: from 53.7 to 18.6 °C above where it tends.
    const double times_cooled = std::log((100.1 - 46.4) / (isomerizes_from_celsius - 46.4));
    const Rate cooling = times_cooled / time_to_cool;
    const Temperature warm =
        schedule.stands.empty() ? boiling_temperature() : schedule.stands.back().temperature;
    HotSide result{.boiling = boiling_temperature(), .after_boil = schedule.stands};
    for (const TemperatureStep& step :
         natural_cooling_steps(warm, celsius(isomerizes_from_celsius), cooling)) {
        result.after_boil.push_back(step);
    }
    return result;
}

}  // namespace entrywise
