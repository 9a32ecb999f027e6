#pragma once

#include <fmt/format.h>
#include <rapidcheck.h>

#include <cstdlib>
#include <ostream>
#include <string>
#include <vector>

#include "tests/support/recipes.hpp"

namespace entrywise {

/// How a recipe is told when a property does not hold for it.
inline void showValue(const Recipe& recipe, std::ostream& out) {
    out << fmt::format("{} L", recipe.volume.middle / liter);
    for (const MashRest& rest : recipe.mash) {
        out << fmt::format(", mash {} C", in_celsius(rest.temperature));
    }
    for (const GristAddition& addition : recipe.grist) {
        out << fmt::format("\n  {} kg {}", addition.mass / kilogram, addition.fermentable.name);
    }
    for (const HopAddition& addition : recipe.hops) {
        out << fmt::format("\n  {} g {}, use {}, {} min, {} C", addition.mass / gram, addition.hop.name,
                           static_cast<int>(addition.use), addition.time.value_or(Duration()) / minute,
                           in_celsius(addition.temperature.value_or(celsius(0.0))));
    }
    for (const YeastAddition& addition : recipe.yeasts) {
        out << "\n  " << addition.yeast.name;
    }
}

}  // namespace entrywise

namespace entrywise::testing {

// Recipes of any kind that a brewer could brew, for properties that hold for all of them.

/// Whether a property holds in a hundred cases. They are the same ones in each run, so that a failure can be
/// seen again; RC_PARAMS in the environment asks for others, as `seed=7 max_success=10000`.
template <class Property>
bool holds(const std::string& description, Property property) {
    static const bool chosen = setenv("RC_PARAMS", "seed=20211129", 0) == 0;
    return chosen && rc::check(description, property);
}

/// A value between two, in a thousand steps; to be called within a property or a generator.
inline double any_between(double low, double high) {
    const int step = *rc::gen::inRange(0, 1001);
    return low + (high - low) * step / 1000.0;
}

inline GristAddition any_grist(double liters) {
    const Fermentable what = *rc::gen::element(pale_ale_malt(), pilsner_malt(), crystal_malt(), black_malt(),
                                               sucrose(), lactose(), pale_malt_extract());
    const double most = needs_a_mash(what.kind) ? 0.1 : 0.03;
    const GristUse use = needs_a_mash(what.kind) ? GristUse::mash : GristUse::boil;
    return grist(what, liters * any_between(0.001, most), use);
}

inline HopAddition any_hop(double liters) {
    const Hop what = *rc::gen::element(cascade(), magnum());
    HopAddition addition = boiled(what, liters * any_between(0.05, 6.0), any_between(0.0, 90.0));
    addition.use =
        *rc::gen::element(HopUse::mash, HopUse::first_wort, HopUse::boil, HopUse::whirlpool, HopUse::dry_hop);
    addition.form = *rc::gen::element(HopForm::pellet, HopForm::whole);
    if (addition.use == HopUse::whirlpool) {
        addition.temperature = celsius(any_between(60.0, 98.0));
    }
    if (addition.use == HopUse::dry_hop) {
        addition.time = any_between(1.0, 10.0) * day;
        addition.temperature = celsius(any_between(2.0, 22.0));
    }
    return addition;
}

template <class Line, class Make>
std::vector<Line> some_of(int least, int most, const Make& make) {
    std::vector<Line> lines;
    const int count = *rc::gen::inRange(least, most + 1);
    for (int line = 0; line < count; ++line) {
        lines.push_back(make());
        lines.back().position = {static_cast<int>(lines.size()), 5};
    }
    return lines;
}

inline rc::Gen<Recipe> any_recipe() {
    return rc::gen::exec([] {
        Recipe recipe = bare_recipe();
        const double liters = any_between(5.0, 60.0);
        recipe.volume.middle = liters * liter;
        recipe.boil.time = any_between(45.0, 120.0) * minute;
        recipe.boil.evaporation = liters * any_between(0.05, 0.2) * liter_per_hour;
        recipe.efficiency = Uncertain<Share>{any_between(55.0, 90.0) * percent, 0.0 * percent};
        recipe.mash = {{.temperature = celsius(any_between(60.0, 74.0)), .time = 60.0 * minute}};
        recipe.grist = some_of<GristAddition>(0, 5, [&] { return any_grist(liters); });
        recipe.grist.push_back(grist(pale_ale_malt(), liters * any_between(0.1, 0.3)));
        recipe.hops = some_of<HopAddition>(0, 6, [&] { return any_hop(liters); });
        recipe.yeasts.front().yeast = *rc::gen::element(american_ale(), saison_diastatic());
        return recipe;
    });
}

}  // namespace entrywise::testing
