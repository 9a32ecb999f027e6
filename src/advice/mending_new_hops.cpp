#include <algorithm>
#include <cmath>
#include <set>

#include "advice/hop_limits.hpp"
#include "advice/mending_levers.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "brewing/ingredient_line.hpp"
#include "brewing/process.hpp"

namespace entrywise {

namespace {

constexpr Duration for_bitterness_from = 30.0 * minute;

bool suits(const Hop& hop, const Style& style) {
    return !contains(style.custom.hops_unusual, hop.family);
}

/// A hop that a lever adds, and whether the brewer has it at hand.
struct NewHop {
    Hop hop;
    bool alpha_is_stated = false;
    bool at_hand = false;
};

/// Aroma hops that the recipe has, or else the first of the pantry: one or two are enough to choose from.
std::vector<NewHop> aroma_hops(const Recipe& recipe, const Style& style, const IngredientTables& pantry) {
    constexpr std::size_t most = 3;
    std::vector<NewHop> candidates;
    std::set<std::string> names;
    for (auto addition = recipe.hops.rbegin(); addition != recipe.hops.rend(); ++addition) {
        const bool for_aroma = addition->hop.purpose != HopPurpose::bittering;
        if (for_aroma && addition->form != HopForm::extract && suits(addition->hop, style) &&
            names.insert(addition->hop.name).second) {
            candidates.push_back({addition->hop, addition->alpha_is_stated, true});
        }
    }
    for (const Hop& hop : pantry.hops) {
        if (candidates.size() < most && names.insert(hop.name).second) {
            candidates.push_back({hop, false, false});
        }
    }
    return candidates;
}

MendingLever added(const Recipe& recipe, const NewHop& candidate, HopAddition addition, double most_per_liter,
                   int line) {
    addition.hop = candidate.hop;
    addition.alpha_is_stated = candidate.alpha_is_stated;
    addition.position = {first_added_line + line, 1};
    const double liters = in(recipe.volume.middle, liter);
    MendingLever lever;
    lever.touches = {"added hop " + std::to_string(line)};
    lever.highest = most_per_liter * liters;
    lever.trials = {0.15 * lever.highest, 0.4 * lever.highest, 0.8 * lever.highest};
    lever.brings_in_new = !candidate.at_hand;
    lever.rounded = to_weighable_grams(recipe.measures);
    const double base = candidate.at_hand ? 0.9 : disruption_of_new;
    lever.disruption = [base, liters](double grams) { return base + 0.05 * grams / liters; };
    lever.apply = [addition](Attempt& attempt, double grams) {
        attempt.recipe.hops.push_back(addition);
        attempt.recipe.hops.back().mass = grams * gram;
    };
    const std::string days =
        addition.use == HopUse::dry_hop ? " for " + fixed(in(*addition.time, day), 0) + " days" : "";
    lever.told = [what = line_of(addition) + days](const Attempt& /*mended*/, double grams) {
        return std::vector<Change>{{what, 0.0, rounded(grams, 1), "g"}};
    };
    return lever;
}

HopAddition boiled(double minutes) {
    HopAddition addition;
    addition.use = HopUse::boil;
    addition.time = minutes * minute;
    return addition;
}

HopAddition dry_hop() {
    HopAddition addition;
    addition.use = HopUse::dry_hop;
    addition.time = usual_dry_hop_time;
    return addition;
}

/// Another cultivar wherever one stands: as much bitterness from what is boiled long, as many grams of what
/// is there for its aroma.
MendingLever in_place_of(const Recipe& recipe, const std::string& name, const Hop& hop) {
    MendingLever lever;
    for (std::size_t index = 0; index < recipe.hops.size(); ++index) {
        if (recipe.hops[index].hop.name == name) {
            lever.touches.push_back("hop " + std::to_string(index));
        }
    }
    lever.trials = {1.0};
    lever.tunable = false;
    lever.brings_in_new = true;
    lever.rounded = [](double done) { return done; };
    lever.disruption = [](double) { return disruption_of_new; };
    lever.apply = [name, hop](Attempt& attempt, double) {
        for (HopAddition& addition : attempt.recipe.hops) {
            if (addition.hop.name != name) {
                continue;
            }
            const bool for_bitterness =
                addition.use == HopUse::first_wort ||
                (addition.use == HopUse::boil && addition.time.value_or(1.0 * hour) >= for_bitterness_from);
            if (for_bitterness) {
                const double grams = in(addition.mass, gram) * (addition.hop.alpha.middle / hop.alpha.middle);
                addition.mass = weighable(grams * gram, attempt.recipe.measures);
            }
            addition.hop = hop;
            addition.alpha_is_stated = false;
        }
    };
    lever.told = [name, to = hop.name](const Attempt& /*mended*/, double) {
        return std::vector<Change>{{"hop", name, to, ""}};
    };
    return lever;
}

std::vector<MendingLever> swaps(const Recipe& recipe, const Style& style, const IngredientTables& pantry) {
    std::vector<MendingLever> levers;
    std::set<std::string> names;
    for (const HopAddition& addition : recipe.hops) {
        const bool usual = contains(style.custom.hops_typical, addition.hop.family) ||
                           contains(style.custom.hops_possible, addition.hop.family);
        if (!usual && !pantry.hops.empty() && names.insert(addition.hop.name).second &&
            addition.form != HopForm::extract) {
            levers.push_back(in_place_of(recipe, addition.hop.name, pantry.hops.front()));
        }
    }
    return levers;
}

/// For bitterness: the hop that the recipe bitters with, or else the first of the pantry.
std::optional<NewHop> bittering_hop(const Recipe& recipe, const IngredientTables& pantry) {
    for (const HopAddition& addition : recipe.hops) {
        if (addition.form != HopForm::extract) {
            return NewHop{addition.hop, addition.alpha_is_stated, true};
        }
    }
    return pantry.hops.empty() ? std::nullopt : std::optional(NewHop{pantry.hops.front(), false, false});
}

bool is_bittered(const Recipe& recipe) {
    return std::any_of(recipe.hops.begin(), recipe.hops.end(), [](const HopAddition& addition) {
        return addition.use != HopUse::dry_hop && addition.use != HopUse::whirlpool;
    });
}

}  // namespace

std::vector<MendingLever> new_hop_levers(const Recipe& recipe, const Style& style,
                                         const IngredientTables& pantry) {
    constexpr double most_late = 5.0;
    std::vector<MendingLever> levers = swaps(recipe, style, pantry);
    int line = 100;
    if (const auto hop = bittering_hop(recipe, pantry); hop && !is_bittered(recipe)) {
        levers.push_back(added(recipe, *hop, boiled(60.0), 3.0, line));
    }
    for (const NewHop& candidate : aroma_hops(recipe, style, pantry)) {
        for (const double minutes : {15.0, 5.0, 0.0}) {
            levers.push_back(added(recipe, candidate, boiled(minutes), most_late, ++line));
        }
    }
    return levers;
}

std::vector<MendingLever> dry_hop_levers(const Recipe& recipe, const Style& style,
                                         const IngredientTables& pantry) {
    std::vector<MendingLever> levers;
    if (style.custom.dry_hop == "unusual") {
        return levers;
    }
    constexpr double most_dry = 10.0;
    int line = 200;
    for (const NewHop& candidate : aroma_hops(recipe, style, pantry)) {
        levers.push_back(added(recipe, candidate, dry_hop(), most_dry, ++line));
    }
    return levers;
}

}  // namespace entrywise
