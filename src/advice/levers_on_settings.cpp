#include "advice/levers_on_settings.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string>

#include "advice/change_of_mass.hpp"
#include "advice/lever_on.hpp"
#include "base/number.hpp"

namespace entrywise {

namespace {

/// The only rest at which starch turns to sugar (common practice: 60 to 73 °C), if there is just one.
std::optional<std::size_t> only_saccharification(const std::vector<MashRest>& mash) {
    const auto converts = [](const MashRest& rest) {
        return rest.temperature >= celsius(60.0) && rest.temperature <= celsius(73.0);
    };
    const auto first = std::find_if(mash.begin(), mash.end(), converts);
    const bool only_one = first != mash.end() && std::none_of(std::next(first), mash.end(), converts);
    return only_one ? std::optional(static_cast<std::size_t>(first - mash.begin())) : std::nullopt;
}

}  // namespace

std::vector<Lever> lever_on_mash(const Recipe& recipe) {
    const auto rest = recipe.mashed ? only_saccharification(recipe.mash) : std::nullopt;
    if (!rest) {
        return {};
    }
    const Temperature from = recipe.mash[*rest].temperature;
    const Measures measures = recipe.measures;
    const auto temperature_at = [from, measures](double setting) {
        return settable(from + setting * kelvin, measures);
    };
    return {lever_on(
        recipe, 0.0, {-5.0, 5.0}, half_a_degree,
        [temperature_at, rest](Recipe& changed, double setting) {
            changed.mash[*rest].temperature = temperature_at(setting);
        },
        [from, temperature_at, measures](double setting) {
            return "mash at " + told(temperature_at(setting), measures) + " instead of " +
                   told(from, measures);
        })};
}

std::vector<Lever> lever_on_carbonation(const Recipe& recipe, const Beer& beer, const Style& style) {
    const double from = in(beer.carbonation.median(), volume_of_co2);
    if (!style.custom.carbonation) {
        return {};
    }
    constexpr double most = 3.8;
    const double low = std::min(in(style.custom.carbonation->low, volume_of_co2), most);
    const double high = std::min(in(style.custom.carbonation->high, volume_of_co2), most);
    const auto volumes_at = [](double setting) { return rounded(setting, 1); };
    return {lever_on(
        recipe, from, {low, high}, half_a_tenth,
        [volumes_at](Recipe& changed, double setting) {
            changed.measured.carbonation.reset();
            changed.conditioning.carbonation = {volumes_at(setting) * volume_of_co2, Carbonation()};
        },
        [from, volumes_at](double setting) {
            return "carbonate to " + fixed(volumes_at(setting), 1) + " vol instead of " + fixed(from, 1);
        })};
}

std::vector<Lever> lever_on_fermentation(const Recipe& recipe) {
    if (!recipe.fermentation_temperature || recipe.yeasts.empty()) {
        return {};
    }
    const Temperature from = *recipe.fermentation_temperature;
    const Span<Temperature>& range = recipe.yeasts.front().yeast.temperature;
    const Measures measures = recipe.measures;
    const auto temperature_at = [measures](double setting) { return settable(celsius(setting), measures); };
    return {lever_on(
        recipe, in_celsius(from), {in_celsius(range.low), in_celsius(range.high)}, half_a_degree,
        [temperature_at](Recipe& changed, double setting) {
            changed.fermentation_temperature = temperature_at(setting);
        },
        [from, temperature_at, measures](double setting) {
            return "ferment at " + told(temperature_at(setting), measures) + " instead of " +
                   told(from, measures);
        })};
}

std::vector<Lever> lever_on_strength(const Recipe& recipe) {
    Mass all = 0.0 * kilogram;
    for (const GristAddition& addition : recipe.grist) {
        all += addition.mass;
    }
    return {lever_on(
        recipe, 1.0, {0.3, 2.0}, one_percent,
        [](Recipe& changed, double setting) {
            for (GristAddition& addition : changed.grist) {
                addition.mass *= setting;
            }
        },
        [all, measures = recipe.measures](double setting) {
            return change_of_mass("all fermentables together", all, setting * all, measures);
        })};
}

}  // namespace entrywise
