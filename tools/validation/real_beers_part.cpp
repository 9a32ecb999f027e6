#include "tools/validation/real_beers_part.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <vector>

#include "base/number.hpp"
#include "tools/validation/markdown.hpp"

namespace entrywise {

namespace {

constexpr double least_coverage = 0.72;
constexpr double most_coverage = 0.88;
constexpr std::size_t enough_values = 20;

/// What the share of values inside the stated interval says, where there are enough of them.
std::string verdict_on(const Errors& errors) {
    if (errors.with_interval < enough_values) {
        return "too few to say";
    }
    const double share = static_cast<double>(errors.inside) / static_cast<double>(errors.with_interval);
    return share < least_coverage ? "too narrow" : share > most_coverage ? "too wide" : "holds";
}

std::string percent_inside(const Errors& errors) {
    return fmt::format(
        "{} of {} ({:.0f} %)", errors.inside, errors.with_interval,
        100.0 * static_cast<double>(errors.inside) / static_cast<double>(errors.with_interval));
}

bool was_measured(const RealRecipe& recipe) {
    return recipe.stated_as == StatedAs::measured;
}

/// The recipes by how their numbers came about, and the strong ones.
struct Group {
    const char* name;
    bool (*holds)(const RealRecipe& recipe);
};
constexpr std::array<Group, 4> groups{{
    {"said to be measured", was_measured},
    {"not said how they came about",
     [](const RealRecipe& recipe) { return recipe.stated_as == StatedAs::unknown; }},
    {"planned or published as a target",
     [](const RealRecipe& recipe) { return recipe.stated_as == StatedAs::planned; }},
    {"of 1.080 and more", is_strong},
}};

}  // namespace

Part in_short(const RealBeers& beers) {
    std::vector<std::string> inside;
    std::vector<std::string> strong;
    std::size_t measured = 0;
    std::size_t strong_beers = 0;
    for (const StatedNumber& number : beers.numbers) {
        inside.push_back(fmt::format("{} {}", number.name, percent_inside(errors_of(number.values))));
        measured = std::max(measured, number.only(was_measured).size());
        const Errors of_strong = errors_of(number.only(is_strong));
        strong.push_back(fmt::format("{} {}", number.name,
                                     with_unit(with_sign(of_strong.bias, number.decimals), number.unit)));
        strong_beers = std::max(strong_beers, of_strong.count);
    }
    return {real_beers_in_short,
            item(fmt::format(
                "**Real recipes: {} of them, of which {} say that their numbers were measured.** The others "
                "state a plan, or do not say. In the stated 80 % interval: {}.",
                beers.count, measured, fmt::join(inside, ", "))) +
                item(fmt::format("**Strong beers are off most**, by {} recipes of 1.080 and more; bias: {}.",
                                 strong_beers, fmt::join(strong, ", ")))};
}

Part section_of_real_beers(const RealBeers& beers, const std::string& state) {
    std::string text = "## Real recipes with stated outcomes\n\n";
    text += paragraph(fmt::format(
        "Made by `tools/validate FOLDER` over a folder of {} published recipes of real beers that is "
        "not part of the project, and carried over where that is run without it. State of the "
        "estimates then: `{}`. Each beer is worked out from its recipe alone; what the recipe leaves "
        "open takes its usual value. Stated bitterness and color are mostly calculations of the "
        "sources and are left out; so may some of the alcohol be. Of the stated 80 % intervals, {:.0f} "
        "to {:.0f} % should hold the outcome, where at least {} values tell.",
        beers.count, state, 100.0 * least_coverage, 100.0 * most_coverage, enough_values));
    text +=
        head({"Number", "Values", "Median absolute error", "Bias", "In the 80 % interval", "The interval"});
    for (const StatedNumber& number : beers.numbers) {
        const auto add = [&](const std::string& name, const std::vector<Comparison>& values) {
            if (const Errors errors = errors_of(values); errors.count > 0) {
                text += row({name, fmt::format("{}", errors.count),
                             with_unit(fixed(errors.median_absolute, number.decimals), number.unit),
                             with_sign(errors.bias, number.decimals), percent_inside(errors),
                             verdict_on(errors)});
            }
        };
        add("**" + number.name + "**", number.values);
        for (const Group& group : groups) {
            add(std::string("… ") + group.name, number.only(group.holds));
        }
    }
    return {real_beers_section, text + '\n'};
}

}  // namespace entrywise
