#include <algorithm>
#include <cmath>

#include "advice/mending_levers.hpp"
#include "base/number.hpp"

namespace entrywise {

namespace {

bool works_by_itself(const YeastClass& yeast) {
    return !yeast.lactic && !yeast.brettanomyces;
}

/// The temperature nearest to the one that the recipe has at which the yeast is at home.
double at_home(const YeastClass& yeast, double degrees) {
    const double low = in_celsius(yeast.temperature.low);
    const double high = in_celsius(yeast.temperature.high);
    return degrees < low ? std::ceil(low) : degrees > high ? std::floor(high) : degrees;
}

double temperature_of(const Recipe& recipe, const YeastClass& yeast) {
    return recipe.fermentation_temperature
               ? in_celsius(*recipe.fermentation_temperature)
               : 0.5 * (in_celsius(yeast.temperature.low) + in_celsius(yeast.temperature.high));
}

MendingLever other_yeast(const Recipe& recipe, std::size_t index, const YeastClass& yeast) {
    const YeastClass& present = recipe.yeasts[index].yeast;
    const double degrees = temperature_of(recipe, present);
    const double wanted = at_home(yeast, degrees);
    const bool states_it = recipe.fermentation_temperature.has_value();
    const bool other_temperature = states_it && wanted != degrees;
    MendingLever lever;
    lever.touches = {"yeast", "pitch", "diacetyl rest", "fermentation time"};
    if (other_temperature) {
        lever.counts_as = 2;
    }
    lever.touches.emplace_back("fermentation temperature");
    lever.trials = {1.0};
    lever.tunable = false;
    lever.brings_in_new = true;
    lever.rounded = [](double chosen) { return chosen; };
    lever.disruption = [other_temperature](double) {
        return disruption_of_new + (other_temperature ? disruption_of_handling : 0.0);
    };
    lever.apply = [index, yeast, wanted, other_temperature, states_it](Attempt& attempt, double) {
        YeastAddition& addition = attempt.recipe.yeasts[index];
        addition.yeast = yeast;
        addition.attenuation_is_stated = false;
        addition.pitch.reset();
        if (states_it) {
            attempt.recipe.fermentation_temperature = celsius(wanted);
        }
    };
    lever.told = [from = present.name, to = yeast.name, degrees, wanted, other_temperature](
                     const Attempt& /*mended*/, double) {
        std::vector<Change> changes{{"yeast", from, to, ""}};
        if (other_temperature) {
            changes.push_back({"fermentation temperature", rounded(degrees, 1), wanted, "°C"});
        }
        return changes;
    };
    return lever;
}

}  // namespace

std::vector<MendingLever> yeast_levers(const Recipe& recipe, const Style& style,
                                       const IngredientTables& pantry) {
    const auto brewers_yeast =
        std::find_if(recipe.yeasts.begin(), recipe.yeasts.end(),
                     [](const YeastAddition& addition) { return works_by_itself(addition.yeast); });
    std::vector<MendingLever> levers;
    if (brewers_yeast == recipe.yeasts.end()) {
        return levers;
    }
    const auto index = static_cast<std::size_t>(brewers_yeast - recipe.yeasts.begin());
    for (const auto* names : {&style.custom.yeast_typical, &style.custom.yeast_possible}) {
        for (const std::string& name : *names) {
            const YeastClass* yeast = find_yeast(pantry, name);
            if (yeast != nullptr && yeast->name != brewers_yeast->yeast.name && works_by_itself(*yeast)) {
                levers.push_back(other_yeast(recipe, index, *yeast));
            }
        }
    }
    return levers;
}

}  // namespace entrywise
