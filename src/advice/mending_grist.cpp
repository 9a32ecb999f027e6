#include <algorithm>

#include "advice/grist_limits.hpp"
#include "advice/mending_levers.hpp"
#include "base/number.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

/// A malt that makes up so much of the grist is not cut below two fifths of itself: it makes the beer.
constexpr double carries_from = 0.4;
constexpr double least_of_carrying = 0.4;
constexpr double most_of_carrying = 1.6;
constexpr double most_of_seasoning = 3.0;

bool is_usual_base(const Fermentable& fermentable, const Custom& custom) {
    return contains(custom.grist_base, fermentable.name);
}

/// By its name or by what it is one of.
bool is_unusual(const Fermentable& fermentable, const Custom& custom) {
    return contains(custom.grist_unusual, fermentable.name) ||
           std::any_of(fermentable.groups.begin(), fermentable.groups.end(),
                       [&](const std::string& group) { return contains(custom.grist_unusual, group); });
}

MendingLever grist_amount(const Recipe& recipe, std::size_t index, const Custom& custom) {
    const GristAddition& addition = recipe.grist[index];
    const Mass all = all_of_grist(recipe);
    const bool unusual = is_unusual(addition.fermentable, custom);
    const bool carries =
        !unusual && (addition.mass > carries_from * all || is_usual_base(addition.fermentable, custom));
    const Mass most = std::max(addition.mass, most_of_grist(addition.fermentable) * all);
    const double now = in(addition.mass, gram);
    MendingLever lever;
    lever.touches = {"grist " + std::to_string(index)};
    lever.now = now;
    lever.lowest = carries ? least_of_carrying * now : 0.0;
    lever.highest = std::min((carries ? most_of_carrying : most_of_seasoning) * now, in(most, gram));
    lever.highest = unusual ? now : std::max(lever.highest, now);
    lever.trials = around_amount(now, lever.lowest, lever.highest);
    lever.rounded = to_weighable_grams(recipe.measures);
    lever.rather_none_below = carries ? 0.0 : hardly_a_rest * now;
    lever.disruption = [now, ease = unusual ? ease_of_unusual : 1.0](double grams) {
        return ease * disruption_of_amount(now, grams);
    };
    lever.apply = [index](Attempt& attempt, double grams) {
        attempt.recipe.grist[index].mass = grams * gram;
    };
    const std::string name = addition.fermentable.name;
    lever.told = [name, now](const Attempt& /*mended*/, double grams) {
        return std::vector<Change>{{name, rounded(now, 1), rounded(grams, 1), "g"}};
    };
    return lever;
}

}  // namespace

std::vector<MendingLever> grist_levers(const Recipe& recipe, const Style& style) {
    std::vector<MendingLever> levers;
    for (std::size_t index = 0; recipe.grist.size() > 1 && index < recipe.grist.size(); ++index) {
        levers.push_back(grist_amount(recipe, index, style.custom));
    }
    return levers;
}

}  // namespace entrywise
