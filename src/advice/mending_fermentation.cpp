#include <algorithm>

#include "advice/mending_levers.hpp"
#include "base/number.hpp"
#include "brewing/pitching.hpp"

namespace entrywise {

namespace {

/// The brewer's yeast: bacteria and Brettanomyces work at a temperature of their own.
const YeastAddition* brewers_yeast(const Recipe& recipe) {
    for (const YeastAddition& addition : recipe.yeasts) {
        if (!addition.yeast.lactic && !addition.yeast.brettanomyces) {
            return &addition;
        }
    }
    return nullptr;
}

MendingLever temperature(const Recipe& recipe, const YeastClass& yeast) {
    const double low = in_celsius(yeast.temperature.low);
    const double high = in_celsius(yeast.temperature.high);
    const double middle = 0.5 * (low + high);
    const double now =
        recipe.fermentation_temperature ? in_celsius(*recipe.fermentation_temperature) : middle;
    MendingLever lever;
    lever.touches = {"fermentation temperature"};
    lever.now = now;
    lever.lowest = low;
    lever.highest = high;
    lever.trials = {low, middle, high};
    lever.rounded = to_settable_celsius(recipe.measures);
    lever.disruption = [now](double degrees) { return disruption_of_setting(now, degrees, 6.0); };
    lever.apply = [](Attempt& attempt, double degrees) {
        attempt.recipe.fermentation_temperature = celsius(degrees);
    };
    lever.told = [now](const Attempt& /*mended*/, double degrees) {
        return std::vector<Change>{{"fermentation temperature", rounded(now, 1), rounded(degrees, 1), "°C"}};
    };
    return lever;
}

MendingLever pitch(const YeastAddition& addition) {
    constexpr double sparest = 0.5;
    constexpr double fullest = 2.0;
    const double usual = in(usual_pitch(addition.yeast.fermentation), million_per_milliliter_plato);
    const double now = addition.pitch ? in(*addition.pitch, million_per_milliliter_plato) : usual;
    MendingLever lever;
    lever.touches = {"pitch"};
    lever.now = now;
    lever.lowest = sparest * usual;
    lever.highest = fullest * usual;
    lever.trials = {lever.lowest, usual, lever.highest};
    lever.rounded = to_steps_of(0.05);
    lever.disruption = [now](double millions) { return disruption_of_setting(now, millions, now); };
    const Position position = addition.position;
    lever.apply = [position](Attempt& attempt, double millions) {
        for (YeastAddition& each : attempt.recipe.yeasts) {
            if (each.position == position) {
                each.pitch = millions * million_per_milliliter_plato;
            }
        }
    };
    lever.told = [now](const Attempt& /*mended*/, double millions) {
        return std::vector<Change>{{"yeast pitched", rounded(now, 2), rounded(millions, 2), "M/mL/P"}};
    };
    return lever;
}

MendingLever time_on_yeast(const Recipe& recipe, double usual_days) {
    const double now = in(*recipe.fermentation_time, day);
    MendingLever lever;
    lever.touches = {"fermentation time"};
    lever.now = now;
    lever.lowest = now;
    lever.highest = usual_days + 7.0;
    lever.trials = {usual_days, lever.highest};
    lever.rounded = to_steps_of(1.0);
    lever.disruption = [now](double days) { return disruption_of_setting(now, days, 14.0); };
    lever.apply = [](Attempt& attempt, double days) { attempt.recipe.fermentation_time = days * day; };
    lever.told = [now](const Attempt& /*mended*/, double days) {
        return std::vector<Change>{{"time on the yeast", rounded(now, 1), rounded(days, 1), "d"}};
    };
    return lever;
}

MendingLever diacetyl_rest(const Measures& measures) {
    constexpr double rest_celsius = 16.0;
    constexpr double longest = 4.0;
    MendingLever lever;
    lever.touches = {"diacetyl rest"};
    lever.highest = longest;
    lever.trials = {2.0, longest};
    lever.rounded = to_steps_of(1.0);
    lever.disruption = [](double days) { return disruption_of_handling + 0.05 * days; };
    lever.apply = [](Attempt& attempt, double days) {
        attempt.recipe.diacetyl_rest = DiacetylRest{celsius(rest_celsius), days * day};
    };
    const std::string what = "diacetyl rest at " + told(celsius(rest_celsius), measures);
    lever.told = [what](const Attempt& /*mended*/, double days) {
        return std::vector<Change>{{what, 0.0, rounded(days, 1), "d"}};
    };
    return lever;
}

}  // namespace

std::vector<MendingLever> fermentation_levers(const Recipe& recipe) {
    const YeastAddition* addition = brewers_yeast(recipe);
    if (addition == nullptr) {
        return {};
    }
    // A week for an ale, not quite two for a beer fermented cold.
    const bool cold = addition->yeast.fermentation == Fermentation::bottom;
    const double usual_days = cold ? 12.0 : 7.0;
    std::vector<MendingLever> levers{temperature(recipe, addition->yeast), pitch(*addition)};
    if (recipe.fermentation_time && in(*recipe.fermentation_time, day) < usual_days) {
        levers.push_back(time_on_yeast(recipe, usual_days));
    }
    if (cold && !recipe.diacetyl_rest) {
        levers.push_back(diacetyl_rest(recipe.measures));
    }
    return levers;
}

}  // namespace entrywise
