#include "tools/measure/real_recipes.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "base/file.hpp"
#include "reading/recipe_file.hpp"

namespace entrywise {

namespace {

StatedAs stated_as(const std::string& kind) {
    if (kind == "measured") {
        return StatedAs::measured;
    }
    return kind == "unknown" ? StatedAs::unknown : StatedAs::planned;
}

std::optional<double> number(const nlohmann::json& stated, const char* key) {
    return stated.contains(key) ? std::optional<double>(stated[key].get<double>()) : std::nullopt;
}

}  // namespace

std::vector<RealRecipe> real_recipes_in(const std::string& folder) {
    constexpr std::size_t most_bytes = 1U << 20U;
    const auto text = read_file(folder + "/index.json", most_bytes);
    std::vector<RealRecipe> entries;
    for (const nlohmann::json& record : nlohmann::json::parse(text ? *text : "[]")) {
        RealRecipe entry;
        entry.id = record.at("id");
        entry.winner = record.value("winner", false);
        entry.styles = record.at("style").get<std::vector<std::string>>();
        const auto& stated = record.at("stated");
        entry.original_gravity = number(stated, "og");
        entry.final_gravity = number(stated, "fg");
        entry.alcohol = number(stated, "abv");
        entry.stated_as = stated_as(record.value("stated_kind", "unknown"));
        for (const std::string& doubt : record.value("doubts", std::vector<std::string>())) {
            entry.additions_left_out =
                entry.additions_left_out || doubt.find("left out") != std::string::npos;
        }
        entries.push_back(entry);
    }
    return entries;
}

std::optional<Recipe> recipe_of(const RealRecipe& entry, const std::string& folder, const Library& library) {
    const auto read = read_recipe(folder + "/" + entry.id + ".yaml", library.ingredients());
    if (!read) {
        for (const Fault& fault : read.faults) {
            fmt::print("{}\n", to_line(fault));
        }
        return std::nullopt;
    }
    return *read;
}

Recipe with_stated_gravities(Recipe recipe, const RealRecipe& entry) {
    if (entry.original_gravity) {
        recipe.measured.original_gravity = {*entry.original_gravity * specific_gravity, SpecificGravity()};
    }
    if (entry.final_gravity) {
        recipe.measured.final_gravity = {*entry.final_gravity * specific_gravity, SpecificGravity()};
    }
    return recipe;
}

}  // namespace entrywise
