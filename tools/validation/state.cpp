#include "tools/validation/state.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <filesystem>

#include "advice/leading_place.hpp"
#include "judging/tasting.hpp"
#include "reading/recipe_file.hpp"

namespace entrywise {

namespace {

template <class Value>
std::string ends_of(const Estimate<Value>& estimate, Value unit, int decimals) {
    const auto interval = estimate.interval();
    return fmt::format("{:.{}f} {:.{}f} ", in(interval.low, unit), decimals, in(interval.high, unit),
                       decimals);
}

std::string told_of(const Tasting& tasting, const LineUp& line_up) {
    const Beer& beer = tasting.beer;
    std::string told = ends_of(beer.original_gravity.total, specific_gravity, 3) +
                       ends_of(beer.final_gravity, specific_gravity, 3) +
                       ends_of(beer.alcohol, percent_by_volume, 1) + ends_of(beer.bitterness.total, ibu, 0) +
                       ends_of(beer.color.total, srm, 0) + ends_of(beer.carbonation, volume_of_co2, 1);
    for (const Attribute attribute : all_attributes()) {
        told += fmt::format("{:.1f} ", tasting.profile.level[attribute].median());
    }
    const auto place = leading_place(tasting, Impression(tasting.beer, tasting.profile), line_up);
    return place ? fmt::format("{}{} {:.1f}\n", told, place->name.code, place->at_risk.median) : told + '\n';
}

/// Fowler, Noll and Vo's hash, 1a of 32 bits: the same on every machine.
std::uint32_t hash_of(const std::string& text) {
    std::uint32_t hash = 2166136261U;
    for (const char byte : text) {
        hash = (hash ^ static_cast<unsigned char>(byte)) * 16777619U;
    }
    return hash;
}

}  // namespace

std::vector<Recipe> recipes_in(const std::string& folder, const Library& library) {
    std::vector<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() == ".yaml") {
            files.push_back(entry.path().string());
        }
    }
    std::sort(files.begin(), files.end());
    std::vector<Recipe> recipes;
    for (const std::string& file : files) {
        const auto recipe = read_recipe(file, library.ingredients());
        if (!recipe) {
            fmt::print(stderr, "{}\n", to_line(recipe.faults.front()));
            std::exit(2);
        }
        recipes.push_back(*recipe);
    }
    return recipes;
}

std::string state_of(const Knowledge& knowledge, const std::vector<Style>& styles,
                     const std::vector<Recipe>& recipes) {
    const LineUp line_up(styles, knowledge.handbook);
    std::string told;
    for (const Recipe& recipe : recipes) {
        told += told_of(taste(recipe, knowledge.handbook.perception), line_up);
    }
    return fmt::format("{:08x}", hash_of(told));
}

}  // namespace entrywise
