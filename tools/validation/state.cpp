#include "tools/validation/state.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <filesystem>

#include "advice/leading_place.hpp"
#include "judging/impression.hpp"
#include "judging/tasting.hpp"
#include "judging/verdict.hpp"
#include "reading/recipe_file.hpp"

namespace entrywise {

namespace {

template <class Value>
std::string ends_of(const Estimate<Value>& estimate, Value unit, int decimals) {
    const auto interval = estimate.interval();
    return fmt::format("{:.{}f} {:.{}f} ", in(interval.low, unit), decimals, in(interval.high, unit),
                       decimals);
}

std::string ends_of(const Estimate<double>& level, int decimals) {
    const auto interval = level.interval();
    return fmt::format("{:.{}f} {:.{}f} ", interval.low, decimals, interval.high, decimals);
}

std::string told_of(const Tasting& tasting, const LineUp& line_up) {
    const Beer& beer = tasting.beer;
    std::string told = ends_of(beer.original_gravity.total, specific_gravity, 4) +
                       ends_of(beer.final_gravity, specific_gravity, 4) +
                       ends_of(beer.alcohol, percent_by_volume, 2) + ends_of(beer.bitterness.total, ibu, 1) +
                       ends_of(beer.color.total, srm, 1) + ends_of(beer.carbonation, volume_of_co2, 2);
    for (const Attribute attribute : all_attributes()) {
        told += ends_of(tasting.profile.level[attribute], 2);
    }
    const auto place = leading_place(tasting, Impression(tasting.beer, tasting.profile), line_up);
    return place ? fmt::format("{}{} {:.2f}\n", told, place->name.code, place->at_risk.median) : told + '\n';
}

/// What the recipe is found to put at risk in the style that it declares.
std::string told_of_sheet(const Tasting& tasting, const std::vector<Style>& styles,
                          const Handbook& handbook) {
    const auto declared = std::find_if(styles.begin(), styles.end(), [&](const Style& style) {
        return tasting.recipe.style && style.code == tasting.recipe.style->code;
    });
    if (declared == styles.end()) {
        return {};
    }
    const Sheet sheet = verdict_on(tasting, *declared, handbook).sheet;
    std::string told;
    for (const Section section : sheet_sections) {
        told += fmt::format("{:.2f} {:.2f} ", sheet.at_risk[section].low, sheet.at_risk[section].high);
    }
    for (const Finding& finding : sheet.findings) {
        told += fmt::format("{} {:.2f} {:.2f} ", id_of(finding), finding.points, finding.noticed);
    }
    for (const Strength& strength : sheet.strengths) {
        told += fmt::format("{} ", name_of(strength.attribute));
    }
    return told + '\n';
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
        const Tasting tasting = taste(recipe, knowledge.handbook.perception);
        told += told_of(tasting, line_up) + told_of_sheet(tasting, styles, knowledge.handbook);
    }
    return fmt::format("{:08x}", hash_of(told));
}

}  // namespace entrywise
