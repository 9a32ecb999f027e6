#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "judging/tasting.hpp"
#include "judging/verdict.hpp"
#include "reading/library.hpp"
#include "reading/recipe_file.hpp"
#include "tests/support/recipes.hpp"

namespace entrywise::testing {

// Recipes pushed out of style: each is an in-style one of the demo club, or the plain pale ale of the tests,
// with one thing turned too far. Nothing in it is left to chance.

/// One thing turned too far; false where the recipe has nothing to turn.
struct Push {
    std::string name;
    std::function<bool(Recipe&, const Library&)> turn;
};

inline bool scale_hops(Recipe& recipe, double factor, bool bittering) {
    bool any = false;
    for (HopAddition& addition : recipe.hops) {
        const bool long_boiled =
            addition.use == HopUse::first_wort || addition.use == HopUse::mash ||
            (addition.use == HopUse::boil && addition.time.value_or(1.0 * hour) >= 30.0 * minute);
        if (long_boiled == bittering) {
            addition.mass *= factor;
            any = true;
        }
    }
    return any;
}

inline bool scale_grist(Recipe& recipe, double factor) {
    for (GristAddition& addition : recipe.grist) {
        addition.mass *= factor;
    }
    return true;
}

inline bool scale_kind(Recipe& recipe, FermentableKind kind, double factor) {
    bool any = false;
    for (GristAddition& addition : recipe.grist) {
        if (addition.fermentable.kind == kind) {
            addition.mass *= factor;
            any = true;
        }
    }
    return any;
}

inline bool add_malt(Recipe& recipe, const Library& library, const std::string& name, double share) {
    Mass all;
    for (const GristAddition& addition : recipe.grist) {
        all += addition.mass;
    }
    const auto malt = library.ingredients().fermentable(name);
    const bool dissolves = malt && !needs_a_mash(malt->kind);
    recipe.grist.push_back({*malt, share * all, dissolves ? GristUse::boil : GristUse::mash, {9001, 5}});
    return true;
}

inline bool add_hop(Recipe& recipe, const Library& library, const std::string& name, double per_liter,
                    HopUse use, double minutes) {
    HopAddition addition;
    addition.hop = *library.ingredients().hop(name);
    addition.mass = per_liter * gram_per_liter * recipe.volume.middle;
    addition.use = use;
    addition.time = minutes * minute;
    addition.position = {9002, 5};
    recipe.hops.push_back(addition);
    return true;
}

inline bool ferment_with(Recipe& recipe, const Library& library, const std::string& name) {
    if (recipe.yeasts.front().yeast.name == name) {
        return false;
    }
    const YeastClass yeast = *library.ingredients().yeast(name);
    recipe.yeasts = {{.yeast = yeast, .position = recipe.yeasts.front().position}};
    recipe.fermentation_temperature =
        yeast.temperature.low + 0.5 * (yeast.temperature.high - yeast.temperature.low);
    return true;
}

inline const std::vector<Push>& pushes() {
    using R = Recipe;
    using L = Library;
    static const std::vector<Push> all{
        {"twice the bittering hops", [](R& r, const L&) { return scale_hops(r, 2.0, true); }},
        {"three times the bittering hops", [](R& r, const L&) { return scale_hops(r, 3.0, true); }},
        {"a third of the bittering hops", [](R& r, const L&) { return scale_hops(r, 0.33, true); }},
        {"hardly any bittering hops", [](R& r, const L&) { return scale_hops(r, 0.1, true); }},
        {"four times the late hops", [](R& r, const L&) { return scale_hops(r, 4.0, false); }},
        {"ten times the late hops", [](R& r, const L&) { return scale_hops(r, 10.0, false); }},
        {"hardly any late hops", [](R& r, const L&) { return scale_hops(r, 0.05, false); }},
        {"dry hops", [](R& r, const L& l) { return add_hop(r, l, "Citra", 6.0, HopUse::dry_hop, 5760.0); }},
        {"a late hop of another kind",
         [](R& r, const L& l) { return add_hop(r, l, "Galaxy", 4.0, HopUse::boil, 3.0); }},
        {"traditional late hops",
         [](R& r, const L& l) { return add_hop(r, l, "Tettnanger", 5.0, HopUse::boil, 5.0); }},
        {"a third more of everything", [](R& r, const L&) { return scale_grist(r, 1.33); }},
        {"two thirds more of everything", [](R& r, const L&) { return scale_grist(r, 1.66); }},
        {"two thirds of everything", [](R& r, const L&) { return scale_grist(r, 0.66); }},
        {"half of everything", [](R& r, const L&) { return scale_grist(r, 0.5); }},
        {"three times the crystal malt",
         [](R& r, const L&) { return scale_kind(r, FermentableKind::crystal, 3.0); }},
        {"no crystal malt to speak of",
         [](R& r, const L&) { return scale_kind(r, FermentableKind::crystal, 0.05); }},
        {"three times the roasted malt",
         [](R& r, const L&) { return scale_kind(r, FermentableKind::roasted, 3.0); }},
        {"hardly any roasted malt",
         [](R& r, const L&) { return scale_kind(r, FermentableKind::roasted, 0.1); }},
        {"four times the sugar", [](R& r, const L&) { return scale_kind(r, FermentableKind::sugar, 4.0); }},
        {"black malt", [](R& r, const L& l) { return add_malt(r, l, "black malt", 0.03); }},
        {"roasted barley", [](R& r, const L& l) { return add_malt(r, l, "roasted barley", 0.07); }},
        {"much crystal malt", [](R& r, const L& l) { return add_malt(r, l, "crystal medium dark", 0.12); }},
        {"much dark crystal malt", [](R& r, const L& l) { return add_malt(r, l, "crystal very dark", 0.1); }},
        {"toasted malt", [](R& r, const L& l) { return add_malt(r, l, "biscuit malt", 0.2); }},
        {"smoked malt", [](R& r, const L& l) { return add_malt(r, l, "beech-smoked malt", 0.4); }},
        {"lactose", [](R& r, const L& l) { return add_malt(r, l, "lactose", 0.12); }},
        {"much sugar", [](R& r, const L& l) { return add_malt(r, l, "sucrose", 0.3); }},
        {"acidulated malt", [](R& r, const L& l) { return add_malt(r, l, "acidulated malt", 0.15); }},
        {"a hot mash",
         [](R& r, const L&) { return !r.mash.empty() && (r.mash.back().temperature = celsius(74.0), true); }},
        {"a warm fermentation",
         [](R& r, const L&) {
             return (r.fermentation_temperature = *r.fermentation_temperature + 8.0 * kelvin, true);
         }},
        {"a hot fermentation",
         [](R& r, const L&) {
             return (r.fermentation_temperature = *r.fermentation_temperature + 13.0 * kelvin, true);
         }},
        {"little yeast",
         [](R& r, const L&) { return (r.yeasts.front().pitch = 0.2 * million_per_milliliter_plato, true); }},
        {"yeast of wheat beer", [](R& r, const L& l) { return ferment_with(r, l, "bavarian wheat"); }},
        {"yeast of saison", [](R& r, const L& l) { return ferment_with(r, l, "saison"); }},
        {"yeast of abbey ale", [](R& r, const L& l) { return ferment_with(r, l, "belgian abbey"); }},
        {"yeast of Scotland", [](R& r, const L& l) { return ferment_with(r, l, "scottish ale"); }},
        {"hardly carbonated",
         [](R& r, const L&) {
             return (r.conditioning.carbonation = Uncertain<Carbonation>{1.0 * volume_of_co2, {}}, true);
         }},
        {"much carbonated",
         [](R& r, const L&) {
             return (r.conditioning.carbonation = Uncertain<Carbonation>{3.8 * volume_of_co2, {}}, true);
         }},
        {"wheat", [](R& r, const L& l) { return add_malt(r, l, "wheat malt", 0.8); }},
        {"rye", [](R& r, const L& l) { return add_malt(r, l, "flaked rye", 0.35); }},
        {"brown malt", [](R& r, const L& l) { return add_malt(r, l, "brown malt", 0.2); }},
        {"dark candi syrup", [](R& r, const L& l) { return add_malt(r, l, "candi syrup dark", 0.2); }},
        {"dextrose", [](R& r, const L& l) { return add_malt(r, l, "dextrose", 0.3); }},
        {"oats", [](R& r, const L& l) { return add_malt(r, l, "flaked oats", 0.3); }},
        {"chocolate malt", [](R& r, const L& l) { return add_malt(r, l, "chocolate malt", 0.08); }},
        {"melanoidin malt", [](R& r, const L& l) { return add_malt(r, l, "melanoidin malt", 0.25); }},
    };
    return all;
}

/// A recipe out of style, and where it comes from.
struct OffStyle {
    Recipe recipe;
    Style style;
    std::string push;
};

/// A recipe and the style that it is of.
struct InStyle {
    Recipe recipe;
    Style style;
};

/// So many points at risk and more are out of style; what is in style has fewer.
inline constexpr double out_of_style_from = 2.5;

inline double median_at_risk(const Recipe& recipe, const Style& style, const Handbook& handbook) {
    return verdict_on(taste(recipe, handbook.perception), style, handbook).sheet.total.median;
}

/// The demo club's in-style beers as they are declared, and the plain pale ale of the tests.
inline std::vector<InStyle> in_style_recipes(const Library& library, const Handbook& handbook) {
    const std::array<std::pair<const char*, const char*>, 7> beers{{{"bell-buoy", "11B"},
                                                                    {"coal-barge", "20A"},
                                                                    {"day-sail", "18A"},
                                                                    {"milk-run", "16A"},
                                                                    {"night-watch", "8B"},
                                                                    {"salt-hay", "25B-standard-pale"},
                                                                    {"storm-glass", "22C"}}};
    std::vector<InStyle> recipes;
    for (const auto& [name, code] : beers) {
        const auto recipe = read_recipe(std::string(ENTRYWISE_SOURCE_DIR) + "/recipes/" + name + ".yaml",
                                        library.ingredients());
        recipes.push_back({*recipe, *library.style({"bjcp-2021", code})});
        recipes.back().recipe.measured = Measured();
    }
    recipes.push_back({pale_ale(), *library.style({"bjcp-2021", "18B"})});
    recipes.back().recipe.name = "Plain pale ale";
    std::erase_if(recipes, [&](const InStyle& each) {
        return median_at_risk(each.recipe, each.style, handbook) >= out_of_style_from;
    });
    return recipes;
}

/// The first `most` recipes that are out of style for one push each; push by push, recipe by recipe.
inline std::vector<OffStyle> off_style_recipes(const Library& library, const Handbook& handbook,
                                               std::size_t most = 200) {
    const std::vector<InStyle> bases = in_style_recipes(library, handbook);
    std::vector<OffStyle> recipes;
    for (const Push& push : pushes()) {
        for (const InStyle& base : bases) {
            OffStyle off{base.recipe, base.style, push.name};
            if (recipes.size() < most && push.turn(off.recipe, library) &&
                median_at_risk(off.recipe, off.style, handbook) >= out_of_style_from) {
                recipes.push_back(std::move(off));
            }
        }
    }
    return recipes;
}

}  // namespace entrywise::testing
