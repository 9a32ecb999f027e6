#include "advice/lever.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "advice/cause.hpp"
#include "advice/weighable.hpp"
#include "base/number.hpp"
#include "brewing/ingredient_line.hpp"
#include "quantity/text.hpp"

namespace entrywise {

namespace {

/// A rest of less than this share of an ingredient is not worth weighing (working value).
constexpr double least_rest = 0.05;

std::string change_of_mass(const std::string& ingredient, Mass from, Mass to) {
    if (weighable(to) <= least_rest * from) {
        return "leave out " + ingredient + " (" + to_text(weighable(from)) + ")";
    }
    const std::string verb = to < from ? "cut " : "raise ";
    return verb + ingredient + " from " + to_text(weighable(from)) + " to " + to_text(weighable(to));
}

std::string degrees(Temperature temperature) {
    return fixed(in_celsius(temperature), 0) + " °C";
}

/// A lever that changes a copy of the recipe.
template <class Change, class Told>
Lever lever_on(const Recipe& recipe, double now, Span<double> settings, Change change, Told told) {
    const auto at = [recipe, change](double setting) {
        Recipe changed = recipe;
        change(changed, setting);
        return changed;
    };
    return {.now = now, .lowest = settings.low, .highest = settings.high, .at = at, .told = told};
}

Lever scaled_grist(const Recipe& recipe, std::size_t index) {
    const GristAddition addition = recipe.grist[index];
    const auto mass_at = [addition](double setting) { return weighable(setting * addition.mass); };
    return lever_on(
        recipe, 1.0, {0.0, 3.0},
        [index, mass_at](Recipe& changed, double setting) { changed.grist[index].mass = mass_at(setting); },
        [addition, mass_at](double setting) {
            return change_of_mass(addition.fermentable.name, addition.mass, mass_at(setting));
        });
}

Lever scaled_hops(const Recipe& recipe, std::size_t index) {
    const HopAddition addition = recipe.hops[index];
    const auto mass_at = [addition](double setting) { return weighable(setting * addition.mass); };
    return lever_on(
        recipe, 1.0, {0.0, 4.0},
        [index, mass_at](Recipe& changed, double setting) { changed.hops[index].mass = mass_at(setting); },
        [addition, mass_at](double setting) {
            return change_of_mass(line_of(addition), addition.mass, mass_at(setting));
        });
}

std::optional<std::size_t> grist_index(const Recipe& recipe, Position position) {
    const auto found =
        std::find_if(recipe.grist.begin(), recipe.grist.end(),
                     [position](const GristAddition& each) { return each.position == position; });
    return found == recipe.grist.end()
               ? std::nullopt
               : std::optional(static_cast<std::size_t>(found - recipe.grist.begin()));
}

std::optional<std::size_t> hop_index(const Recipe& recipe, Position position) {
    const auto found =
        std::find_if(recipe.hops.begin(), recipe.hops.end(),
                     [position](const HopAddition& each) { return each.position == position; });
    return found == recipe.hops.end() ? std::nullopt
                                      : std::optional(static_cast<std::size_t>(found - recipe.hops.begin()));
}

/// Whether an addition seasons the beer rather than making it: base malt and adjuncts carry the strength, so
/// that to scale one of them for its flavor would make another beer.
bool seasons(const Fermentable& fermentable) {
    const bool carries = fermentable.kind == FermentableKind::base ||
                         fermentable.kind == FermentableKind::adjunct ||
                         fermentable.kind == FermentableKind::malt_extract;
    return !carries || fermentable.gives.smoke > 0.0;
}

/// The seasoning or hop that gives most of what the finding is about.
std::vector<Lever> largest_source(const Finding& finding, const Recipe& recipe, const Beer& beer) {
    for (const SourceShare& source : sources_of(finding, beer)) {
        const auto grist = grist_index(recipe, source.position);
        if (grist && seasons(recipe.grist[*grist].fermentable)) {
            return {scaled_grist(recipe, *grist)};
        }
        if (const auto hop = hop_index(recipe, source.position)) {
            return {scaled_hops(recipe, *hop)};
        }
    }
    return {};
}

/// One more hop addition, from none to so many grams per liter.
Lever added_hops(const Recipe& recipe, const HopAddition& addition, double most_grams_per_liter,
                 const std::string& how) {
    const Volume volume = recipe.volume.middle;
    const auto mass_at = [volume](double setting) { return weighable(setting * gram_per_liter * volume); };
    const bool bittering = addition.hop.purpose == HopPurpose::bittering;
    const std::string what = bittering ? "an aroma hop of the style" : addition.hop.name;
    return lever_on(
        recipe, 0.0, {0.0, most_grams_per_liter},
        [addition, mass_at](Recipe& changed, double setting) {
            changed.hops.push_back(addition);
            changed.hops.back().mass = mass_at(setting);
        },
        [mass_at, what, how](double setting) {
            return "add " + to_text(mass_at(setting)) + " of " + what + " " + how;
        });
}

/// A dry hop of the recipe's last hop, where the recipe has none and the style bears it.
std::vector<Lever> new_dry_hop(const Recipe& recipe, const Style& style) {
    const auto is_dry = [](const HopAddition& addition) { return addition.use == HopUse::dry_hop; };
    const bool has_one = std::any_of(recipe.hops.begin(), recipe.hops.end(), is_dry);
    if (recipe.hops.empty() || has_one || style.custom.dry_hop == "unusual") {
        return {};
    }
    HopAddition addition = recipe.hops.back();
    addition.use = HopUse::dry_hop;
    addition.time = 3.0 * day;
    addition.temperature.reset();
    return {added_hops(recipe, addition, 10.0, "as dry hop for 3 days")};
}

/// Late hops of the recipe's last hop, where no dry hop suits the style.
std::vector<Lever> new_late_hop(const Recipe& recipe) {
    if (recipe.hops.empty()) {
        return {};
    }
    HopAddition addition = recipe.hops.back();
    addition.use = HopUse::boil;
    addition.time = 5.0 * minute;
    addition.temperature.reset();
    return {added_hops(recipe, addition, 6.0, "five minutes before the end of the boil")};
}

std::vector<Lever> hop_levers(const Finding& finding, const Recipe& recipe, const Beer& beer,
                              const Style& style) {
    std::vector<Lever> levers = largest_source(finding, recipe, beer);
    if (finding.direction == Direction::below) {
        for (const auto& added : {new_dry_hop(recipe, style), new_late_hop(recipe)}) {
            levers.insert(levers.end(), added.begin(), added.end());
        }
    }
    return levers;
}

/// The mash warmer or colder, within what enzymes bear. A mash of several rests has no one temperature to
/// turn.
std::vector<Lever> mash_temperature(const Recipe& recipe) {
    if (!recipe.mashed || recipe.mash.size() != 1) {
        return {};
    }
    const Temperature from = recipe.mash.front().temperature;
    const auto temperature_at = [from](double setting) { return from + std::round(setting) * kelvin; };
    return {lever_on(
        recipe, 0.0, {-5.0, 5.0},
        [temperature_at](Recipe& changed, double setting) {
            changed.mash.front().temperature = temperature_at(setting);
        },
        [from, temperature_at](double setting) {
            return "mash at " + degrees(temperature_at(setting)) + " instead of " + degrees(from);
        })};
}

/// Carbonation within what is customary for the style, and never near what a common beer bottle bears at most
/// (4 volumes, common practice).
std::vector<Lever> carbonation(const Recipe& recipe, const Beer& beer, const Style& style) {
    const double from = in(beer.carbonation.median(), volume_of_co2);
    if (!style.custom.carbonation) {
        return {};
    }
    constexpr double most = 3.8;
    const double low = std::min(in(style.custom.carbonation->low, volume_of_co2), most);
    const double high = std::min(in(style.custom.carbonation->high, volume_of_co2), most);
    const auto volumes_at = [](double setting) { return rounded(setting, 1); };
    return {lever_on(
        recipe, from, {low, high},
        [volumes_at](Recipe& changed, double setting) {
            changed.measured.carbonation.reset();
            changed.conditioning.carbonation = {volumes_at(setting) * volume_of_co2, Carbonation()};
        },
        [from, volumes_at](double setting) {
            return "carbonate to " + fixed(volumes_at(setting), 1) + " vol instead of " + fixed(from, 1);
        })};
}

std::vector<Lever> fermentation_temperature(const Recipe& recipe) {
    if (!recipe.fermentation_temperature || recipe.yeasts.empty()) {
        return {};
    }
    const Temperature from = *recipe.fermentation_temperature;
    const Span<Temperature>& range = recipe.yeasts.front().yeast.temperature;
    const auto temperature_at = [](double setting) { return celsius(std::round(setting)); };
    return {lever_on(
        recipe, in_celsius(from), {in_celsius(range.low), in_celsius(range.high)},
        [temperature_at](Recipe& changed, double setting) {
            changed.fermentation_temperature = temperature_at(setting);
        },
        [from, temperature_at](double setting) {
            return "ferment at " + degrees(temperature_at(setting)) + " instead of " + degrees(from);
        })};
}

/// All fermentables by the same factor: a weaker or stronger beer of the same kind.
std::vector<Lever> strength(const Recipe& recipe) {
    Mass all = 0.0 * kilogram;
    for (const GristAddition& addition : recipe.grist) {
        all += addition.mass;
    }
    return {lever_on(
        recipe, 1.0, {0.3, 2.0},
        [](Recipe& changed, double setting) {
            for (GristAddition& addition : changed.grist) {
                addition.mass *= setting;
            }
        },
        [all](double setting) { return change_of_mass("all fermentables together", all, setting * all); })};
}

bool is_any_of(std::string_view word, std::initializer_list<std::string_view> words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

}  // namespace

std::vector<Lever> levers_for(const Finding& finding, const Recipe& recipe, const Beer& beer,
                              const Style& style) {
    const std::string& attribute = finding.attribute;
    if (attribute == "hop") {
        return hop_levers(finding, recipe, beer, style);
    }
    if (is_any_of(attribute, {"body", "finish", "sweetness"})) {
        std::vector<Lever> levers = mash_temperature(recipe);
        const std::vector<Lever> gas = carbonation(recipe, beer, style);
        levers.insert(levers.end(), gas.begin(), gas.end());
        return levers;
    }
    if (is_any_of(attribute, {"alcohol", "warmth"})) {
        return strength(recipe);
    }
    if (is_any_of(attribute, {"carbonation", "head_size", "head_retention", "creaminess"})) {
        return carbonation(recipe, beer, style);
    }
    if (is_any_of(attribute, {"ester", "phenol"})) {
        return fermentation_temperature(recipe);
    }
    return largest_source(finding, recipe, beer);
}

}  // namespace entrywise
