#include <algorithm>
#include <optional>

#include "advice/mending_levers.hpp"
#include "base/number.hpp"

namespace entrywise {

namespace {

constexpr double coolest_mash = 62.0;
constexpr double warmest_mash = 70.0;

/// The rest in which most of the starch is converted: the longest between 58 and 76 °C.
std::optional<std::size_t> converting_rest(const Recipe& recipe) {
    std::optional<std::size_t> longest;
    for (std::size_t rest = 0; recipe.mashed && rest < recipe.mash.size(); ++rest) {
        const double degrees = in_celsius(recipe.mash[rest].temperature);
        const bool converts = degrees >= 58.0 && degrees <= 76.0;
        if (converts && (!longest || recipe.mash[rest].time > recipe.mash[*longest].time)) {
            longest = rest;
        }
    }
    return longest;
}

MendingLever mash_temperature(const Recipe& recipe, std::size_t rest) {
    const double now = in_celsius(recipe.mash[rest].temperature);
    // Rests rise: the one that converts stays between its neighbors.
    const double above = rest > 0 ? in_celsius(recipe.mash[rest - 1].temperature) + 1.0 : coolest_mash;
    const double below =
        rest + 1 < recipe.mash.size() ? in_celsius(recipe.mash[rest + 1].temperature) - 1.0 : warmest_mash;
    MendingLever lever;
    lever.touches = {"mash"};
    lever.now = now;
    lever.lowest = std::max(coolest_mash, above);
    lever.highest = std::max(std::min(warmest_mash, below), lever.lowest);
    lever.trials = spread_over(lever.lowest, lever.highest, 4);
    lever.rounded = to_settable_celsius(recipe.measures);
    lever.disruption = [now](double degrees) { return disruption_of_setting(now, degrees, 6.0); };
    lever.apply = [rest](Attempt& attempt, double degrees) {
        attempt.recipe.mash[rest].temperature = celsius(degrees);
    };
    lever.told = [now](const Attempt& /*mended*/, double degrees) {
        return std::vector<Change>{{"mash temperature", rounded(now, 1), rounded(degrees, 1), "°C"}};
    };
    return lever;
}

/// Never shorter than the longest hop addition, nor than half an hour, in which wort is boiled sterile and
/// its protein drops.
MendingLever boil_time(const Recipe& recipe) {
    const double now = in(*recipe.boil.time, minute);
    double longest_hop = 30.0;
    for (const HopAddition& addition : recipe.hops) {
        const bool boiled = addition.use == HopUse::boil && addition.time;
        longest_hop = boiled ? std::max(longest_hop, in(*addition.time, minute)) : longest_hop;
    }
    MendingLever lever;
    lever.touches = {"boil"};
    lever.now = now;
    lever.lowest = std::min(now, longest_hop);
    lever.highest = std::max(now, 120.0);
    lever.trials = {lever.lowest, 75.0, 90.0, lever.highest};
    lever.rounded = to_steps_of(5.0);
    lever.disruption = [now](double minutes) { return disruption_of_setting(now, minutes, 60.0); };
    lever.apply = [](Attempt& attempt, double minutes) { attempt.recipe.boil.time = minutes * minute; };
    lever.told = [now](const Attempt& /*mended*/, double minutes) {
        return std::vector<Change>{{"boil", rounded(now, 1), rounded(minutes, 1), "min"}};
    };
    return lever;
}

}  // namespace

std::vector<MendingLever> mash_levers(const Recipe& recipe) {
    std::vector<MendingLever> levers;
    if (const auto rest = converting_rest(recipe)) {
        levers.push_back(mash_temperature(recipe, *rest));
    }
    if (recipe.boil.time) {
        levers.push_back(boil_time(recipe));
    }
    return levers;
}

}  // namespace entrywise
