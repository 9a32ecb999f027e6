#include <algorithm>

#include "advice/grist_limits.hpp"
#include "advice/mending_levers.hpp"
#include "base/number.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

/// A new malt beside those that the recipe has takes no more than a third of the grist.
constexpr double most_of_new = 0.35;

bool is_in(const Recipe& recipe, const Fermentable& fermentable) {
    return std::any_of(recipe.grist.begin(), recipe.grist.end(), [&](const GristAddition& addition) {
        return addition.fermentable.name == fermentable.name;
    });
}

GristUse use_of(const Fermentable& fermentable, const Recipe& recipe) {
    const bool dissolves = !needs_a_mash(fermentable.kind);
    return dissolves || !recipe.mashed ? GristUse::boil : GristUse::mash;
}

/// Without a mash only what dissolves or steeps is of any use.
bool gives_without_mash(const Fermentable& fermentable) {
    return !needs_a_mash(fermentable.kind) || fermentable.kind == FermentableKind::crystal ||
           fermentable.kind == FermentableKind::roasted;
}

MendingLever added(const Recipe& recipe, const Fermentable& fermentable, int line) {
    const double all = in(all_of_grist(recipe), gram);
    GristAddition addition;
    addition.fermentable = fermentable;
    addition.use = recipe.mashed ? use_of(fermentable, recipe) : GristUse::boil;
    if (!recipe.mashed && needs_a_mash(fermentable.kind)) {
        addition.use = GristUse::mash;
    }
    addition.position = {first_added_line + line, 1};
    MendingLever lever;
    lever.touches = {"added " + fermentable.name};
    lever.highest = std::min(most_of_grist(fermentable), most_of_new) * all;
    lever.trials = {0.2 * lever.highest, 0.6 * lever.highest};
    lever.brings_in_new = true;
    lever.rounded = to_weighable_grams(recipe.measures);
    lever.disruption = [all](double grams) { return disruption_of_new + grams / all; };
    lever.apply = [addition](Attempt& attempt, double grams) {
        attempt.recipe.grist.push_back(addition);
        attempt.recipe.grist.back().mass = grams * gram;
    };
    lever.told = [name = fermentable.name](const Attempt& /*mended*/, double grams) {
        return std::vector<Change>{{name, 0.0, rounded(grams, 1), "g"}};
    };
    return lever;
}

/// The same amount of another base malt.
MendingLever in_place_of(const Recipe& recipe, std::size_t index, const Fermentable& fermentable) {
    MendingLever lever;
    lever.touches = {"grist " + std::to_string(index), "added " + fermentable.name};
    lever.trials = {1.0};
    lever.tunable = false;
    lever.brings_in_new = true;
    lever.rounded = [](double done) { return done; };
    lever.disruption = [](double) { return disruption_of_new; };
    lever.apply = [index, fermentable](Attempt& attempt, double) {
        attempt.recipe.grist[index].fermentable = fermentable;
    };
    lever.told = [from = recipe.grist[index].fermentable.name, to = fermentable.name](
                     const Attempt& /*mended*/, double) {
        return std::vector<Change>{{"malt", from, to, ""}};
    };
    return lever;
}

std::optional<std::size_t> largest_base(const Recipe& recipe) {
    std::optional<std::size_t> largest;
    for (std::size_t index = 0; index < recipe.grist.size(); ++index) {
        const bool base = recipe.grist[index].fermentable.kind == FermentableKind::base;
        if (base && (!largest || recipe.grist[index].mass > recipe.grist[*largest].mass)) {
            largest = index;
        }
    }
    return largest;
}

}  // namespace

std::vector<MendingLever> new_malt_levers(const Recipe& recipe, const Style& style,
                                          const IngredientTables& pantry) {
    std::vector<MendingLever> levers;
    const auto base = largest_base(recipe);
    int line = 0;
    for (const Fermentable& fermentable : pantry.fermentables) {
        ++line;
        if (is_in(recipe, fermentable) || (!recipe.mashed && !gives_without_mash(fermentable))) {
            continue;
        }
        levers.push_back(added(recipe, fermentable, line));
        if (base && recipe.mashed && contains(style.custom.grist_base, fermentable.name)) {
            levers.push_back(in_place_of(recipe, *base, fermentable));
        }
    }
    return levers;
}

}  // namespace entrywise
