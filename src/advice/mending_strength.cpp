#include <cmath>

#include "advice/mending_levers.hpp"
#include "base/number.hpp"

namespace entrywise {

namespace {

constexpr double weakest = 0.5;
constexpr double strongest = 1.8;

Mass scaled(Mass mass, double percents, const Measures& measures) {
    return weighable(percents / 100.0 * mass, measures);
}

/// The fermentables that were scaled and not set by another lever besides, before and after.
struct Sums {
    Mass before;
    Mass after;
    bool all = true;
};

Sums sums_of(const Recipe& recipe, const Recipe& mended, double percents) {
    Sums sums;
    for (const GristAddition& addition : recipe.grist) {
        const GristAddition* now = nullptr;
        for (const GristAddition& each : mended.grist) {
            now = each.position == addition.position ? &each : now;
        }
        if (now != nullptr && now->mass == scaled(addition.mass, percents, recipe.measures)) {
            sums.before += addition.mass;
            sums.after += now->mass;
        } else {
            sums.all = false;
        }
    }
    return sums;
}

MendingLever all_fermentables(const Recipe& recipe) {
    MendingLever lever;
    lever.touches = {"strength"};
    lever.now = 100.0;
    lever.lowest = 100.0 * weakest;
    lever.highest = 100.0 * strongest;
    lever.trials = {65.0, 85.0, 120.0, 150.0};
    lever.rounded = to_steps_of(1.0);
    lever.disruption = [](double percents) { return 0.2 + disruption_of_amount(100.0, percents); };
    lever.apply = [](Attempt& attempt, double percents) {
        for (GristAddition& addition : attempt.recipe.grist) {
            addition.mass = scaled(addition.mass, percents, attempt.recipe.measures);
        }
    };
    lever.told = [recipe](const Attempt& mended, double percents) {
        const Sums sums = sums_of(recipe, mended.recipe, percents);
        const std::string what = sums.all ? "all fermentables together" : "all other fermentables together";
        return std::vector<Change>{
            {what, rounded(in(sums.before, kilogram), 3), rounded(in(sums.after, kilogram), 3), "kg"}};
    };
    return lever;
}

MendingLever volume(const Recipe& recipe) {
    const double now = in(recipe.volume.middle, liter);
    MendingLever lever;
    lever.touches = {"strength"};
    lever.now = now;
    lever.lowest = 0.75 * now;
    lever.highest = 1.35 * now;
    lever.trials = {0.85 * now, 1.15 * now, 1.3 * now};
    lever.rounded = to_measurable_liters(recipe.measures);
    lever.disruption = [now](double liters) { return 0.4 + disruption_of_amount(now, liters); };
    lever.apply = [](Attempt& attempt, double liters) {
        Uncertain<Volume>& volume = attempt.recipe.volume;
        const double ratio = liters * liter / volume.middle;
        volume = {ratio * volume.middle, ratio * volume.half_width};
    };
    lever.told = [now](const Attempt& /*mended*/, double liters) {
        return std::vector<Change>{
            {"volume of wort, from the same grist and hops", rounded(now, 2), rounded(liters, 2), "L"}};
    };
    return lever;
}

}  // namespace

std::vector<MendingLever> strength_levers(const Recipe& recipe) {
    return {all_fermentables(recipe), volume(recipe)};
}

}  // namespace entrywise
