#include <algorithm>

#include "advice/mending_levers.hpp"
#include "base/number.hpp"

namespace entrywise {

namespace {

bool is_tasted(const ExtraAddition& extra) {
    return extra.mass &&
           (extra.kind == ExtraKind::spice || extra.kind == ExtraKind::salt || extra.kind == ExtraKind::acid);
}

MendingLever amount_of(const Recipe& recipe, std::size_t index) {
    constexpr double most_multiple = 3.0;
    const ExtraAddition& extra = recipe.extras[index];
    const double now = in(*extra.mass, gram);
    MendingLever lever;
    lever.touches = {"extra " + std::to_string(index)};
    lever.now = now;
    lever.highest = most_multiple * now;
    lever.trials = around_amount(now, 0.0, lever.highest);
    lever.rounded = to_weighable_grams(recipe.measures);
    lever.disruption = [now](double grams) { return disruption_of_amount(now, grams); };
    lever.apply = [index](Attempt& attempt, double grams) {
        attempt.recipe.extras[index].mass = grams * gram;
    };
    lever.told = [name = extra.name, now](const Attempt& /*mended*/, double grams) {
        return std::vector<Change>{{name, rounded(now, 1), rounded(grams, 1), "g"}};
    };
    return lever;
}

/// Something that the style is known by, up to so many grams to the liter.
MendingLever added(const Recipe& recipe, const std::string& name, ExtraKind kind, double most_per_liter,
                   int line) {
    ExtraAddition extra;
    extra.name = name;
    extra.kind = kind;
    extra.use = ExtraUse::boil;
    extra.time = 5.0 * minute;
    extra.position = {first_added_line + line, 1};
    MendingLever lever;
    lever.touches = {"added " + name};
    lever.highest = most_per_liter * in(recipe.volume.middle, liter);
    lever.trials = {0.3 * lever.highest, 0.6 * lever.highest};
    lever.brings_in_new = true;
    lever.rounded = to_weighable_grams(recipe.measures);
    lever.disruption = [](double) { return disruption_of_new; };
    lever.apply = [extra](Attempt& attempt, double grams) {
        attempt.recipe.extras.push_back(extra);
        attempt.recipe.extras.back().mass = grams * gram;
    };
    lever.told = [name](const Attempt& /*mended*/, double grams) {
        return std::vector<Change>{
            {name + ", five minutes before the end of the boil", 0.0, rounded(grams, 1), "g"}};
    };
    return lever;
}

bool has(const Recipe& recipe, ExtraKind kind) {
    return std::any_of(recipe.extras.begin(), recipe.extras.end(),
                       [kind](const ExtraAddition& extra) { return extra.kind == kind; });
}

bool asks_for(const Style& style, Attribute attribute) {
    return style.expected[attribute] && style.expected[attribute]->low >= 1.0;
}

}  // namespace

std::vector<MendingLever> extra_levers(const Recipe& recipe, const Style& style) {
    std::vector<MendingLever> levers;
    for (std::size_t index = 0; index < recipe.extras.size(); ++index) {
        if (is_tasted(recipe.extras[index])) {
            levers.push_back(amount_of(recipe, index));
        }
    }
    if (asks_for(style, Attribute::flavor_salt) && !has(recipe, ExtraKind::salt)) {
        levers.push_back(added(recipe, "table salt", ExtraKind::salt, 1.2, 91));
    }
    if (asks_for(style, Attribute::flavor_spice) && !has(recipe, ExtraKind::spice)) {
        levers.push_back(added(recipe, "coriander", ExtraKind::spice, 2.5, 92));
    }
    return levers;
}

}  // namespace entrywise
