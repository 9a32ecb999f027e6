#include "advice/levers_on_ingredients.hpp"

#include <algorithm>
#include <string>

#include "advice/cause.hpp"
#include "advice/change_of_mass.hpp"
#include "advice/grist_limits.hpp"
#include "advice/hop_limits.hpp"
#include "advice/lever_on.hpp"
#include "base/text.hpp"
#include "brewing/ingredient_line.hpp"

namespace entrywise {

namespace {

/// A hop or a seasoning of the recipe, by its place in the list of its kind.
struct Ingredient {
    bool is_hop = false;
    std::size_t index = 0;
};

Mass mass_of(const Recipe& recipe, Ingredient ingredient) {
    return ingredient.is_hop ? recipe.hops[ingredient.index].mass : recipe.grist[ingredient.index].mass;
}

void scale(Recipe& recipe, Ingredient ingredient, double setting) {
    Mass& mass = ingredient.is_hop ? recipe.hops[ingredient.index].mass : recipe.grist[ingredient.index].mass;
    mass = weighable(setting * mass, recipe.measures);
}

std::string name_of(const Recipe& recipe, Ingredient ingredient) {
    return ingredient.is_hop ? line_of(recipe.hops[ingredient.index])
                             : recipe.grist[ingredient.index].fermentable.name;
}

/// All of them by the same factor, none to nothing.
Lever scaled(const Recipe& recipe, const std::vector<Ingredient>& ingredients, Span<double> settings) {
    return lever_on(
        recipe, 1.0, settings, one_percent,
        [ingredients](Recipe& changed, double setting) {
            for (const Ingredient ingredient : ingredients) {
                scale(changed, ingredient, setting);
            }
        },
        [recipe, ingredients](double setting) {
            std::vector<std::string> changes;
            for (const Ingredient ingredient : ingredients) {
                const Mass mass = mass_of(recipe, ingredient);
                changes.push_back(
                    from_mass_to_mass(name_of(recipe, ingredient), mass, setting * mass, recipe.measures));
            }
            return (setting < 1.0 ? "cut " : "raise ") + listed(changes, "and");
        });
}

/// How many times as much of an ingredient is neither another recipe (working values) nor more than brewers
/// take.
double most_times(const Recipe& recipe, Ingredient ingredient) {
    if (ingredient.is_hop) {
        const HopAddition& addition = recipe.hops[ingredient.index];
        const Mass most = most_of_hops(addition.use) * recipe.volume.middle;
        return std::clamp(in(most, addition.mass), 1.0, 4.0);
    }
    const GristAddition& addition = recipe.grist[ingredient.index];
    const Mass most = most_of_grist(addition.fermentable) * all_of_grist(recipe);
    return std::clamp(in(most, addition.mass), 1.0, 3.0);
}

/// From leaving an ingredient out to the most of it.
Lever scaled(const Recipe& recipe, Ingredient ingredient) {
    return lever_on(
        recipe, 1.0, {0.0, most_times(recipe, ingredient)}, one_percent,
        [ingredient](Recipe& changed, double setting) { scale(changed, ingredient, setting); },
        [recipe, ingredient](double setting) {
            const Mass mass = mass_of(recipe, ingredient);
            return change_of_mass(name_of(recipe, ingredient), mass, setting * mass, recipe.measures);
        });
}

template <class Addition>
std::optional<std::size_t> index_at(const std::vector<Addition>& additions, Position position) {
    const auto found = std::find_if(additions.begin(), additions.end(),
                                    [position](const Addition& each) { return each.position == position; });
    return found == additions.end() ? std::nullopt
                                    : std::optional(static_cast<std::size_t>(found - additions.begin()));
}

/// Whether an addition seasons the beer rather than making it: base malt and adjuncts carry the strength, so
/// that to scale one of them for its flavor would make another beer.
bool seasons(const Fermentable& fermentable) {
    const bool carries = fermentable.kind == FermentableKind::base ||
                         fermentable.kind == FermentableKind::adjunct ||
                         fermentable.kind == FermentableKind::malt_extract;
    return !carries || fermentable.gives.smoke > 0.0;
}

/// Unmalted grain and sugars that leave something besides their extract.
bool is_there_for_texture(const Fermentable& fermentable) {
    return fermentable.kind == FermentableKind::adjunct || fermentable.kind == FermentableKind::sugar;
}

/// The hops and seasonings that a finding comes from, largest share first.
std::vector<Ingredient> ingredients_behind(const std::vector<SourceShare>& sources, const Recipe& recipe) {
    std::vector<Ingredient> ingredients;
    for (const SourceShare& source : sources) {
        const auto grist = index_at(recipe.grist, source.position);
        const auto hop = index_at(recipe.hops, source.position);
        if (hop) {
            ingredients.push_back({true, *hop});
        } else if (grist && seasons(recipe.grist[*grist].fermentable)) {
            ingredients.push_back({false, *grist});
        }
    }
    return ingredients;
}

/// Whether a hop is there for its bitterness: half an hour and more in the boil (common practice).
bool is_for_bitterness(const HopAddition& addition) {
    constexpr Duration long_enough = 30.0 * minute;
    if (addition.use == HopUse::boil) {
        return addition.time ? *addition.time >= long_enough : addition.hop.purpose == HopPurpose::bittering;
    }
    return addition.use == HopUse::first_wort || addition.use == HopUse::mash;
}

/// The hops of a purpose that give a good part of what the finding is about, largest share first; all hops
/// that do where none is there for that.
template <class IsMeant>
std::vector<Ingredient> hops_behind(const Finding& finding, const Recipe& recipe, const Beer& beer,
                                    IsMeant is_meant) {
    std::vector<SourceShare> sources = sources_of(finding, beer);
    std::erase_if(sources, [](const SourceShare& source) { return source.share < least_share_of_a_cause; });
    std::vector<Ingredient> hops = ingredients_behind(sources, recipe);
    std::erase_if(hops, [](Ingredient ingredient) { return !ingredient.is_hop; });
    std::vector<Ingredient> meant = hops;
    std::erase_if(meant, [&](Ingredient hop) { return !is_meant(recipe.hops[hop.index]); });
    return meant.empty() ? hops : meant;
}

/// The first of the hops by itself, and where that is not enough, the first three together, to no less than a
/// third and no more than twice of each (working values).
std::vector<Lever> one_or_all(const Recipe& recipe, std::vector<Ingredient> hops) {
    constexpr std::size_t most_together = 3;
    constexpr Span<double> together{0.33, 2.0};
    if (hops.empty()) {
        return {};
    }
    std::vector<Lever> levers{scaled(recipe, hops.front())};
    hops.resize(std::min(hops.size(), most_together));
    if (hops.size() > 1) {
        levers.push_back(scaled(recipe, hops, together));
        levers.back().is_last_resort = true;
    }
    return levers;
}

/// One more hop addition, from none to so many grams per liter.
Lever added_hops(const Recipe& recipe, const HopAddition& addition, double most_grams_per_liter,
                 const std::string& how) {
    const Volume volume = recipe.volume.middle;
    const Measures measures = recipe.measures;
    const auto mass_at = [volume, measures](double setting) {
        return weighable(setting * gram_per_liter * volume, measures);
    };
    const bool bittering = addition.hop.purpose == HopPurpose::bittering;
    const std::string what = bittering ? "an aroma hop of the style" : addition.hop.name;
    return lever_on(
        recipe, 0.0, {0.0, most_grams_per_liter}, a_fiftieth_of_a_gram,
        [addition, mass_at](Recipe& changed, double setting) {
            changed.hops.push_back(addition);
            changed.hops.back().mass = mass_at(setting);
        },
        [mass_at, measures, what, how](double setting) {
            return "add " + told(mass_at(setting), measures) + " of " + what + " " + how;
        });
}

/// The recipe's last hop once more.
HopAddition last_hop_again(const Recipe& recipe, HopUse use, Duration time) {
    HopAddition addition = recipe.hops.back();
    addition.use = use;
    addition.time = time;
    addition.temperature.reset();
    return addition;
}

/// More of the last hop: dry, where the recipe has no dry hop and the style bears one, at the end of the
/// boil, which leaves most to smell for as much bitterness, and five minutes before.
std::vector<Lever> new_hops(const Recipe& recipe, const Style& style) {
    if (recipe.hops.empty()) {
        return {};
    }
    const auto is_dry = [](const HopAddition& addition) { return addition.use == HopUse::dry_hop; };
    const bool has_dry = std::any_of(recipe.hops.begin(), recipe.hops.end(), is_dry);
    std::vector<Lever> levers;
    if (!has_dry && style.custom.dry_hop != "unusual") {
        levers.push_back(added_hops(recipe, last_hop_again(recipe, HopUse::dry_hop, 3.0 * day), 10.0,
                                    "as dry hop for 3 days"));
    }
    levers.push_back(added_hops(recipe, last_hop_again(recipe, HopUse::boil, 0.0 * minute), 6.0,
                                "at the end of the boil"));
    levers.push_back(added_hops(recipe, last_hop_again(recipe, HopUse::boil, 5.0 * minute), 6.0,
                                "five minutes before the end of the boil"));
    return levers;
}

}  // namespace

std::vector<Lever> largest_source(const Finding& finding, const Recipe& recipe, const Beer& beer) {
    const std::vector<Ingredient> ingredients = ingredients_behind(sources_of(finding, beer), recipe);
    return ingredients.empty() ? std::vector<Lever>() : std::vector{scaled(recipe, ingredients.front())};
}

std::vector<Lever> lever_on_creamy_grain(const Finding& finding, const Recipe& recipe, const Beer& beer) {
    std::vector<SourceShare> sources = sources_of(finding, beer);
    std::erase_if(sources, [&recipe](const SourceShare& source) {
        const auto index = index_at(recipe.grist, source.position);
        return !index || !is_there_for_texture(recipe.grist[*index].fermentable);
    });
    const auto index = sources.empty() ? std::nullopt : index_at(recipe.grist, sources.front().position);
    return index ? std::vector{scaled(recipe, Ingredient{false, *index})} : std::vector<Lever>();
}

std::vector<Lever> levers_on_late_hops(const Finding& finding, const Recipe& recipe, const Beer& beer,
                                       const Style& style) {
    if (finding.direction == Direction::above) {
        const auto is_for_aroma = [](const HopAddition& addition) { return !is_for_bitterness(addition); };
        return one_or_all(recipe, hops_behind(finding, recipe, beer, is_for_aroma));
    }
    std::vector<Lever> levers = largest_source(finding, recipe, beer);
    const std::vector<Lever> added = new_hops(recipe, style);
    levers.insert(levers.end(), added.begin(), added.end());
    return levers;
}

std::vector<Lever> levers_on_bittering_hops(const Finding& finding, const Recipe& recipe, const Beer& beer) {
    return one_or_all(recipe, hops_behind(finding, recipe, beer, is_for_bitterness));
}

}  // namespace entrywise
