#include "screening/entry_folder.hpp"

#include <algorithm>
#include <filesystem>
#include <system_error>

#include "base/file.hpp"
#include "base/text.hpp"
#include "interchange/exchange.hpp"
#include "interchange/recipe_table.hpp"

namespace entrywise {

namespace {

namespace fs = std::filesystem;

bool is_recipe_file(const fs::path& path) {
    const std::string ending = lowered(path.extension().string());
    if (path.filename().string().starts_with('.')) {
        return false;
    }
    if (ending == ".csv" || ending == ".tsv") {
        const Outcome<std::string> text = read_file(path.string(), most_exchange_bytes);
        return text && starts_as_recipe_table(*text);
    }
    return ending == ".yaml" || ending == ".json" || ending == ".xml";
}

Fault folder_fault(const std::string& folder, std::string found) {
    return {.place = {folder, {}},
            .found = std::move(found),
            .expected = "a folder of recipes",
            .nearest = {},
            .remedy = "Recipe files end in .yaml, .json, .xml, .csv or .tsv."};
}

}  // namespace

Outcome<std::vector<ClubEntry>> entries_in_folder(const std::string& folder) {
    std::vector<std::string> files;
    std::error_code error;
    fs::directory_iterator at(folder, error);
    while (!error && at != fs::directory_iterator()) {
        std::error_code unknown;
        if (!at->is_directory(unknown) && is_recipe_file(at->path())) {
            files.push_back(at->path().string());
        }
        at.increment(error);
    }
    if (error) {
        return folder_fault(folder, error.message());
    }
    if (files.empty()) {
        return folder_fault(folder, "no recipe");
    }
    std::sort(files.begin(), files.end());
    std::vector<ClubEntry> entries;
    entries.reserve(files.size());
    for (std::string& file : files) {
        ClubEntry entry;
        entry.number = fs::path(file).stem().string();
        entry.place = {file, {}};
        entry.category_place = entry.place;
        entry.recipe_file = std::move(file);
        entries.push_back(std::move(entry));
    }
    return entries;
}

}  // namespace entrywise
