#include <algorithm>

#include "advice/mending_levers.hpp"
#include "base/number.hpp"
#include "brewing/conditioning.hpp"

namespace entrywise {

namespace {

/// Common beer bottles bear 4 volumes at most (common practice); what is asked for varies by 0.2, and priming
/// is never even.
constexpr double most_carbonated = 3.6;
constexpr double least_carbonated = 1.0;
constexpr double cold_celsius = 4.0;

MendingLever carbonation(const Beer& beer, const Style& style) {
    const double now = rounded(in(beer.carbonation.median(), volume_of_co2), 1);
    const Span<Carbonation> usual =
        style.custom.carbonation.value_or(Span<Carbonation>{1.8 * volume_of_co2, 2.8 * volume_of_co2});
    MendingLever lever;
    lever.touches = {"carbonation"};
    lever.now = now;
    lever.lowest = std::clamp(in(usual.low, volume_of_co2), least_carbonated, most_carbonated);
    lever.highest = std::clamp(in(usual.high, volume_of_co2), least_carbonated, most_carbonated);
    lever.trials = spread_over(lever.lowest, lever.highest, 3);
    lever.rounded = to_steps_of(0.1);
    lever.disruption = [now](double volumes) { return disruption_of_setting(now, volumes, 1.5); };
    lever.apply = [](Attempt& attempt, double volumes) {
        attempt.recipe.measured.carbonation.reset();
        attempt.recipe.conditioning.carbonation =
            Uncertain<Carbonation>{volumes * volume_of_co2, Carbonation()};
    };
    lever.told = [now](const Attempt& /*mended*/, double volumes) {
        return std::vector<Change>{{"carbonation", now, rounded(volumes, 1), "vol"}};
    };
    return lever;
}

MendingLever weeks_in_the_cold(const Recipe& recipe) {
    constexpr double longest = 10.0;
    const double now = weeks_cold(recipe.conditioning);
    const bool is_cold = now > 0.0;
    MendingLever lever;
    lever.touches = {"cold time"};
    lever.now = now;
    lever.lowest = now;
    lever.highest = std::max(longest, now);
    lever.trials = {std::min(now + 2.0, lever.highest), std::min(now + 5.0, lever.highest), lever.highest};
    lever.rounded = to_steps_of(1.0);
    lever.disruption = [now](double weeks) { return disruption_of_setting(now, weeks, 6.0); };
    lever.apply = [is_cold](Attempt& attempt, double weeks) {
        Conditioning& conditioning = attempt.recipe.conditioning;
        conditioning.time = weeks * week;
        if (!is_cold) {
            conditioning.temperature = celsius(cold_celsius);
        }
    };
    const std::string what =
        is_cold ? "time in the cold" : "time in the cold, at " + told(celsius(cold_celsius), recipe.measures);
    lever.told = [now, what](const Attempt& /*mended*/, double weeks) {
        return std::vector<Change>{{what, rounded(now, 1), rounded(weeks, 1), "wk"}};
    };
    return lever;
}

/// Something that is done or not done.
MendingLever handling(std::string touches, std::string what, std::string from, std::string to,
                      std::function<void(Recipe&)> change) {
    MendingLever lever;
    lever.touches = {std::move(touches)};
    lever.trials = {1.0};
    lever.tunable = false;
    lever.rounded = [](double done) { return done; };
    lever.disruption = [](double) { return disruption_of_handling; };
    lever.apply = [change = std::move(change)](Attempt& attempt, double) { change(attempt.recipe); };
    lever.told = [change = Change{std::move(what), std::move(from), std::move(to), ""}](
                     const Attempt& /*mended*/, double) { return std::vector<Change>{change}; };
    return lever;
}

void add_gelatin(Recipe& recipe) {
    ExtraAddition extra;
    extra.name = "gelatin";
    extra.kind = ExtraKind::fining;
    // A tenth of a gram to the liter (common practice).
    extra.mass = weighable(0.1 * gram_per_liter * recipe.volume.middle, recipe.measures);
    extra.use = ExtraUse::fermenter;
    extra.position = {first_added_line + 90, 1};
    recipe.extras.push_back(extra);
}

bool is_fined(const Recipe& recipe) {
    return std::any_of(recipe.extras.begin(), recipe.extras.end(),
                       [](const ExtraAddition& extra) { return extra.kind == ExtraKind::fining; });
}

/// The time that a beer is kept in any case, spent in the cold.
MendingLever kept_cold(const Recipe& recipe) {
    const double now = rounded(in_celsius(*recipe.conditioning.temperature), 1);
    MendingLever lever = handling("cold time", "", "", "", [](Recipe& changed) {
        changed.conditioning.temperature = celsius(cold_celsius);
    });
    lever.told = [now](const Attempt& /*mended*/, double) {
        return std::vector<Change>{{"conditioning temperature", now, cold_celsius, "°C"}};
    };
    return lever;
}

/// Whether the recipe gives the beer time that is not cold.
bool is_kept_warm(const Recipe& recipe) {
    const Conditioning& conditioning = recipe.conditioning;
    return conditioning.temperature && conditioning.time && weeks_cold(conditioning) == 0.0 &&
           *conditioning.time > 1.0 * week;
}

}  // namespace

std::vector<MendingLever> packaging_levers(const Recipe& recipe, const Beer& beer, const Style& style) {
    std::vector<MendingLever> levers{carbonation(beer, style),
                                     is_kept_warm(recipe) ? kept_cold(recipe) : weeks_in_the_cold(recipe)};
    if (!is_fined(recipe)) {
        levers.push_back(handling("finings", "finings", "none", "gelatin, 0.1 g/L", add_gelatin));
    }
    const bool filtered = recipe.conditioning.filtered.value_or(false);
    levers.push_back(handling("filter", "filtered", filtered ? "yes" : "no", filtered ? "no" : "yes",
                              [filtered](Recipe& changed) { changed.conditioning.filtered = !filtered; }));
    return levers;
}

}  // namespace entrywise
