#include <algorithm>
#include <cmath>

#include "advice/hop_limits.hpp"
#include "advice/mending_levers.hpp"
#include "base/number.hpp"
#include "brewing/ingredient_line.hpp"

namespace entrywise {

namespace {

constexpr double most_multiple = 4.0;

bool is_unusual(const HopAddition& addition, const Custom& custom) {
    const bool dry = addition.use == HopUse::dry_hop && custom.dry_hop == "unusual";
    return dry || std::find(custom.hops_unusual.begin(), custom.hops_unusual.end(), addition.hop.family) !=
                      custom.hops_unusual.end();
}

MendingLever hop_amount(const Recipe& recipe, std::size_t index, const Custom& custom) {
    const HopAddition& addition = recipe.hops[index];
    const bool unusual = is_unusual(addition, custom);
    const double now = in(addition.mass, gram);
    const double most = in(most_of_hops(addition.use) * recipe.volume.middle, gram);
    MendingLever lever;
    lever.touches = {"hop " + std::to_string(index)};
    lever.now = now;
    lever.lowest = 0.0;
    lever.highest = unusual ? now : std::max(std::min(most_multiple * now, most), now);
    lever.trials = around_amount(now, 0.0, lever.highest);
    lever.rounded = to_weighable_grams(recipe.measures);
    lever.rather_none_below = hardly_a_rest * now;
    lever.disruption = [now, ease = unusual ? ease_of_unusual : 1.0](double grams) {
        return ease * disruption_of_amount(now, grams);
    };
    lever.apply = [index](Attempt& attempt, double grams) { attempt.recipe.hops[index].mass = grams * gram; };
    const std::string line = line_of(addition);
    lever.told = [line, now](const Attempt& /*mended*/, double grams) {
        return std::vector<Change>{{line, rounded(now, 1), rounded(grams, 1), "g"}};
    };
    return lever;
}

/// Minutes are set in fives where a few more or less make no difference.
double to_minutes(double minutes) {
    return minutes < 10.0 ? std::round(minutes) : 5.0 * std::round(minutes / 5.0);
}

MendingLever hop_time(const Recipe& recipe, std::size_t index) {
    const HopAddition& addition = recipe.hops[index];
    const double now = in(*addition.time, minute);
    const double boil = in(recipe.boil.time.value_or(1.0 * hour), minute);
    MendingLever lever;
    lever.touches = {"hop " + std::to_string(index)};
    lever.now = now;
    lever.lowest = 0.0;
    lever.highest = std::max(boil, now);
    lever.trials = {0.0, 10.0, 30.0, lever.highest};
    lever.rounded = [](double minutes) { return to_minutes(minutes); };
    lever.disruption = [now](double minutes) { return 0.1 + disruption_of_setting(now, minutes, 60.0); };
    lever.apply = [index](Attempt& attempt, double minutes) {
        attempt.recipe.hops[index].time = minutes * minute;
    };
    const std::string what = addition.hop.name + " " + told(addition.mass, recipe.measures) + ", boiled";
    lever.told = [what, now](const Attempt& /*mended*/, double minutes) {
        return std::vector<Change>{{what, rounded(now, 1), rounded(minutes, 1), "min"}};
    };
    return lever;
}

}  // namespace

std::vector<MendingLever> hop_levers(const Recipe& recipe, const Style& style) {
    std::vector<MendingLever> levers;
    for (std::size_t index = 0; index < recipe.hops.size(); ++index) {
        levers.push_back(hop_amount(recipe, index, style.custom));
        if (recipe.hops[index].use == HopUse::boil && recipe.hops[index].time) {
            levers.push_back(hop_time(recipe, index));
        }
    }
    return levers;
}

}  // namespace entrywise
