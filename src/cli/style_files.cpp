#include "cli/style_files.hpp"

#include <algorithm>
#include <filesystem>
#include <system_error>

namespace entrywise {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view ending = ".yaml";

bool is_hidden(const fs::path& path) {
    return path.filename().native().starts_with('.');
}

/// Guides stand one folder deep below a folder of styles.
constexpr int deepest = 1;

void add_files(const fs::path& folder, int depth, StyleFiles& found) {
    std::error_code error;
    std::vector<fs::path> paths;
    for (fs::directory_iterator entry(folder, error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        if (!is_hidden(entry->path())) {
            paths.push_back(entry->path());
        }
    }
    if (error) {
        found.faults.push_back({.place = {folder.string(), {}},
                                .found = error.message(),
                                .expected = "a readable folder",
                                .nearest = {},
                                .remedy = "Check the path."});
        return;
    }
    std::sort(paths.begin(), paths.end());
    for (const fs::path& path : paths) {
        if (is_folder(path.string())) {
            if (depth < deepest) {
                add_files(path, depth + 1, found);
            }
        } else if (path.extension() == ending) {
            found.files.push_back(path.string());
        } else if (path.extension() == ".yml") {
            found.faults.push_back({.place = {path.string(), {}},
                                    .found = "a name that ends in .yml",
                                    .expected = "one that ends in .yaml",
                                    .nearest = {},
                                    .remedy = "Other endings are not read: rename it."});
        }
    }
}

}  // namespace

bool is_folder(const std::string& path) {
    std::error_code error;
    return fs::is_directory(path, error);
}

StyleFiles style_files_in(const std::string& folder) {
    StyleFiles found;
    add_files(folder, 0, found);
    if (found.files.empty() && found.faults.empty()) {
        found.faults.push_back({.place = {folder, {}},
                                .found = "a folder without a style",
                                .expected = "files whose names end in .yaml",
                                .nearest = {},
                                .remedy = {}});
    }
    return found;
}

std::vector<std::string> codes_beside(const std::string& file) {
    std::vector<std::string> codes;
    std::error_code error;
    const fs::path folder = fs::absolute(file).parent_path();
    for (fs::directory_iterator entry(folder, error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        if (entry->path().extension() == ending) {
            codes.push_back(entry->path().stem().string());
        }
    }
    std::sort(codes.begin(), codes.end());
    return codes;
}

}  // namespace entrywise
