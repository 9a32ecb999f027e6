#include "tools/measure/customary_recipe.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <string_view>
#include <vector>

#include "brewing/brew.hpp"
#include "sensing/middle_of_style.hpp"

namespace entrywise {

namespace {

constexpr std::size_t most_bases = 3;
constexpr double most_beside_the_base = 0.65;
constexpr double liters = 20.0;

/// What stands for a group that a style names, and how much of it is usual.
struct Usual {
    std::string_view group;
    std::string_view malt;
    double share;
};

constexpr std::array<Usual, 12> usual_of_groups{{{"crystal", "crystal medium", 0.07},
                                                 {"roasted", "chocolate malt", 0.05},
                                                 {"toasted", "biscuit malt", 0.05},
                                                 {"wheat", "wheat malt", 0.25},
                                                 {"oats", "flaked oats", 0.10},
                                                 {"rye", "rye malt", 0.15},
                                                 {"smoked", "beech-smoked malt", 0.40},
                                                 {"corn", "flaked corn", 0.15},
                                                 {"rice", "flaked rice", 0.15},
                                                 {"sugar", "sucrose", 0.10},
                                                 {"lactose", "lactose", 0.05},
                                                 {"unmalted wheat", "unmalted wheat", 0.30}}};

/// The hop that stands for a family.
struct Cultivar {
    std::string_view family;
    std::string_view hop;
};

constexpr std::array<Cultivar, 8> cultivars{{{"german-traditional", "Hallertau Mittelfrueh"},
                                             {"american", "Cascade"},
                                             {"english", "East Kent Goldings"},
                                             {"new-world", "Citra"},
                                             {"czech", "Saaz"},
                                             {"slovenian-polish", "Styrian Goldings"},
                                             {"belgian-french", "Strisselspalt"},
                                             {"any", "Hallertau Mittelfrueh"}}};

double share_of(FermentableKind kind) {
    switch (kind) {
        case FermentableKind::base:
            return 0.2;
        case FermentableKind::adjunct:
            return 0.1;
        case FermentableKind::sugar:
            return 0.08;
        default:
            return 0.05;
    }
}

struct Part {
    Fermentable fermentable;
    double share = 0.0;
};

bool is_dark(const Fermentable& fermentable) {
    return fermentable.kind == FermentableKind::crystal || fermentable.kind == FermentableKind::roasted;
}

std::vector<Part> parts_beside_the_base(const Custom& custom, const KnownIngredients& ingredients) {
    std::vector<Part> parts;
    double sum = 0.0;
    for (const std::string& name : custom.grist_typical) {
        const auto* const usual = std::find_if(usual_of_groups.begin(), usual_of_groups.end(),
                                               [&name](const Usual& each) { return each.group == name; });
        const bool is_group = usual != usual_of_groups.end();
        const auto known = ingredients.fermentable(is_group ? std::string(usual->malt) : name);
        if (known && known->kind != FermentableKind::fruit) {
            parts.push_back({*known, is_group ? usual->share : share_of(known->kind)});
            sum += parts.back().share;
        }
    }
    for (Part& part : parts) {
        part.share *= std::min(most_beside_the_base / std::max(sum, most_beside_the_base), 1.0);
    }
    return parts;
}

std::vector<Part> grist_of(const Custom& custom, const KnownIngredients& ingredients) {
    std::vector<Part> grist = parts_beside_the_base(custom, ingredients);
    double left = 1.0;
    for (const Part& part : grist) {
        left -= part.share;
    }
    std::vector<Fermentable> bases;
    for (const std::string& name : custom.grist_base) {
        const auto known = ingredients.fermentable(name);
        if (known && bases.size() < most_bases) {
            bases.push_back(*known);
        }
    }
    for (const Fermentable& base : bases) {
        grist.push_back({base, left / static_cast<double>(bases.size())});
    }
    return bases.empty() ? std::vector<Part>() : grist;
}

std::optional<Hop> hop_of(const Custom& custom, const KnownIngredients& ingredients) {
    const std::string family = custom.hops_typical.empty() ? "any" : custom.hops_typical.front();
    const auto* const found = std::find_if(cultivars.begin(), cultivars.end(),
                                           [&family](const Cultivar& each) { return each.family == family; });
    return found == cultivars.end() ? std::nullopt : ingredients.hop(std::string(found->hop));
}

std::vector<YeastAddition> yeasts_of(const Custom& custom, const KnownIngredients& ingredients) {
    std::vector<YeastAddition> yeasts;
    const bool any = custom.yeast_typical.empty() || custom.yeast_typical.front() == "any";
    for (const std::string& name : any ? std::vector<std::string>{"american ale"} : custom.yeast_typical) {
        const auto known = ingredients.yeast(name);
        // Bacteria by themselves leave sweet wort.
        const bool is_enough = !yeasts.empty() && !yeasts.back().yeast.lactic;
        if (known && !is_enough) {
            yeasts.push_back({.yeast = *known, .attenuation_is_stated = false, .position = {}});
        }
        if (!yeasts.empty() && yeasts.back().yeast.brettanomyces) {
            break;
        }
    }
    return yeasts;
}

/// What is turned until the numbers are right.
struct Turned {
    double kilograms = 5.0;
    double grams_of_bittering = 30.0;
    double mash_celsius = 66.0;
    double dark_malts = 1.0;  ///< of their usual share
};

double late_level(const Style& style) {
    double level = 0.0;
    for (const Attribute attribute : {Attribute::aroma_hop, Attribute::flavor_hop}) {
        if (const auto& asked = style.expected[attribute]) {
            level = std::max(level, 0.5 * (asked->low + asked->high));
        }
    }
    return level;
}

/// Late and dry hops for what the style asks to smell and taste of them (common practice: 1 g/L in the last
/// ten minutes is low, a dry hop of 2 to 12 g/L medium to very high).
void add_late_hops(const Style& style, const Hop& hop, Recipe& recipe) {
    const double level = late_level(style);
    const auto add = [&](double grams, HopUse use, Duration time) {
        if (grams > 0.0) {
            recipe.hops.push_back({.hop = hop,
                                   .mass = grams * gram,
                                   .use = use,
                                   .time = time,
                                   .temperature = std::nullopt,
                                   .position = {static_cast<int>(recipe.hops.size()) + 100, 1}});
        }
    };
    add(level >= 1.5 ? 8.0 * level : 0.0, HopUse::boil, 10.0 * minute);
    add(level >= 3.5 ? 10.0 * (level - 2.0) : 0.0, HopUse::boil, 1.0 * minute);
    if (style.custom.dry_hop == "typical") {
        add(liters * std::exp2(level - 3.0), HopUse::dry_hop, 4.0 * day);
    }
}

void add_grist(const std::vector<Part>& grist, const Turned& turned, Recipe& recipe) {
    for (const Part& part : grist) {
        const double dark = is_dark(part.fermentable) ? turned.dark_malts : 1.0;
        const bool is_sugar = part.fermentable.kind == FermentableKind::sugar;
        recipe.grist.push_back({.fermentable = part.fermentable,
                                .mass = dark * part.share * turned.kilograms * kilogram,
                                .use = is_sugar ? GristUse::boil : GristUse::mash,
                                .position = {static_cast<int>(recipe.grist.size()) + 1, 1}});
    }
}

/// Salt and coriander where the style asks for them, as much as goses and wits take (common practice).
void add_extras(const Style& style, Recipe& recipe) {
    const auto add = [&](Attribute attribute, const std::string& name, ExtraKind kind, Mass mass) {
        const auto& asked = style.expected[attribute];
        if (asked && asked->low + asked->high >= 2.0) {
            recipe.extras.push_back({.name = name,
                                     .kind = kind,
                                     .mass = mass,
                                     .volume = std::nullopt,
                                     .time = 5.0 * minute,
                                     .position = {static_cast<int>(recipe.extras.size()) + 200, 1}});
        }
    };
    add(Attribute::flavor_salt, "salt", ExtraKind::salt, 14.0 * gram);
    add(Attribute::flavor_spice, "coriander", ExtraKind::spice, 18.0 * gram);
}

void keep(const Style& style, Recipe& recipe) {
    const Fermentation fermentation = recipe.yeasts.back().yeast.fermentation;
    recipe.conditioning.time = fermentation == Fermentation::mixed    ? 400.0 * day
                               : fermentation == Fermentation::bottom ? 35.0 * day
                                                                      : 14.0 * day;
    recipe.conditioning.temperature = celsius(fermentation == Fermentation::bottom ? 2.0 : 12.0);
    if (const auto& gas = style.custom.carbonation) {
        recipe.conditioning.carbonation = Uncertain<Carbonation>{0.5 * (gas->low + gas->high), Carbonation()};
    }
}

/// Moves what is turned towards the middle of the style. The factors are how the numbers answer, roughly.
void turn(const Beer& beer, const MiddleOfStyle& middle, Turned& turned) {
    const auto points = [](SpecificGravity gravity) { return in(gravity, specific_gravity) - 1.0; };
    turned.kilograms *= points(middle.original_gravity) / points(beer.original_gravity.total.median());
    const double ibus_short = in(middle.bitterness - beer.bitterness.total.median(), ibu);
    turned.grams_of_bittering = std::max(turned.grams_of_bittering + 0.6 * ibus_short, 0.5);
    const double too_sweet = points(beer.final_gravity.median()) - points(middle.final_gravity);
    turned.mash_celsius = std::clamp(turned.mash_celsius - 700.0 * too_sweet, 60.5, 72.0);
    turned.dark_malts *= std::clamp(in(middle.color, srm) / in(beer.color.total.median(), srm), 0.6, 1.6);
}

}  // namespace

std::optional<Recipe> customary_recipe(const Style& style, const KnownIngredients& ingredients) {
    constexpr int turns = 14;
    const auto middle = middle_of(style);
    const std::vector<Part> grist = grist_of(style.custom, ingredients);
    const auto hop = hop_of(style.custom, ingredients);
    const std::vector<YeastAddition> yeasts = yeasts_of(style.custom, ingredients);
    if (!middle || grist.empty() || !hop || yeasts.empty()) {
        return std::nullopt;
    }
    Turned turned;
    Recipe recipe;
    for (int count = 0; count < turns; ++count) {
        recipe = Recipe();
        recipe.name = style.name;
        recipe.volume = {liters * liter, 0.4 * liter};
        recipe.efficiency = Uncertain<Share>{75.0 * percent, 4.0 * percent};
        recipe.boil.time = 60.0 * minute;
        recipe.mash = {{.temperature = celsius(turned.mash_celsius), .time = 60.0 * minute}};
        add_grist(grist, turned, recipe);
        recipe.hops.push_back({.hop = *hop,
                               .mass = turned.grams_of_bittering * gram,
                               .time = 60.0 * minute,
                               .temperature = std::nullopt,
                               .position = {100, 1}});
        add_late_hops(style, *hop, recipe);
        add_extras(style, recipe);
        recipe.yeasts = yeasts;
        keep(style, recipe);
        Deviates at_middle(1);
        turn(brew(recipe, at_middle), *middle, turned);
    }
    return recipe;
}

}  // namespace entrywise
