#include "cli/other_recipes.hpp"

#include <algorithm>
#include <filesystem>
#include <system_error>

#include "cli/recipe_input.hpp"

namespace entrywise {

namespace {

namespace fs = std::filesystem;

Fault folder_fault(const std::string& folder, const std::string& found) {
    return {.place = {folder, {}},
            .found = found,
            .expected = "a folder with other recipes to blend with",
            .nearest = {},
            .remedy = "Check the path behind --with."};
}

}  // namespace

Outcome<std::vector<Recipe>> other_recipes(const std::string& folder, const std::string& recipe_file,
                                           const Library& library) {
    std::vector<std::string> files;
    std::error_code error;
    fs::directory_iterator entry(folder, error);
    while (!error && entry != fs::directory_iterator()) {
        std::error_code failed;
        const bool same = recipe_file != "-" && fs::equivalent(entry->path(), recipe_file, failed);
        if (entry->path().extension() == ".yaml" && !same) {
            files.push_back(entry->path().string());
        }
        entry.increment(error);
    }
    if (error) {
        return folder_fault(folder, error.message());
    }
    if (files.empty()) {
        return folder_fault(folder, "no other recipe");
    }
    std::sort(files.begin(), files.end());
    std::vector<Recipe> recipes;
    std::vector<Fault> faults;
    for (const std::string& file : files) {
        const auto recipe = recipe_named(file, library);
        if (recipe) {
            recipes.push_back(*recipe);
        } else {
            faults.insert(faults.end(), recipe.faults.begin(), recipe.faults.end());
        }
    }
    return faults.empty() ? Outcome<std::vector<Recipe>>(recipes) : Outcome<std::vector<Recipe>>(faults);
}

}  // namespace entrywise
