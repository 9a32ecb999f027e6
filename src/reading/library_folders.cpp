#include "reading/library_folders.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <system_error>
#include <utility>
#include <vector>

#include "reading/document_file.hpp"

namespace entrywise {

namespace {

namespace fs = std::filesystem;

struct Listing {
    std::vector<fs::path> files;    ///< *.yaml
    std::vector<fs::path> folders;  ///< but for hidden ones
};

Outcome<Listing> listed_folder(const fs::path& folder) {
    std::error_code error;
    fs::directory_iterator entry(folder, error);
    Listing listing;
    while (!error && entry != fs::directory_iterator()) {
        std::error_code unreadable;
        const fs::path& path = entry->path();
        if (entry->is_directory(unreadable) && !path.filename().native().starts_with('.')) {
            listing.folders.push_back(path);
        } else if (path.extension() == ".yaml") {
            listing.files.push_back(path);
        }
        entry.increment(error);
    }
    if (error) {
        Fault fault;
        fault.place.file = folder.string();
        fault.found = error.message();
        fault.expected = "a readable folder";
        fault.remedy = "Check the path.";
        return fault;
    }
    std::sort(listing.files.begin(), listing.files.end());
    std::sort(listing.folders.begin(), listing.folders.end());
    return listing;
}

std::vector<Fault> add_styles(const fs::path& folder, OutsideFiles& outside) {
    const auto top = listed_folder(folder);
    if (!top) {
        return top.faults;
    }
    for (const fs::path& file : top->files) {
        outside.file_of[fmt::format("styles/{}", file.filename().string())] = file.string();
    }
    for (const fs::path& guide : top->folders) {
        const auto styles = listed_folder(guide);
        if (!styles) {
            return styles.faults;
        }
        for (const fs::path& file : styles->files) {
            const std::string path =
                fmt::format("styles/{}/{}", guide.filename().string(), file.filename().string());
            outside.file_of[path] = file.string();
        }
    }
    return {};
}

std::vector<Fault> add_ingredients(const fs::path& folder, OutsideFiles& outside) {
    const auto listing = listed_folder(folder);
    if (!listing) {
        return listing.faults;
    }
    for (const fs::path& file : listing->files) {
        outside.ingredient_files.push_back(file.string());
    }
    return {};
}

}  // namespace

Outcome<Library> open_library(std::span<const EmbeddedDocument> embedded, const LibraryFolders& folders) {
    OutsideFiles outside;
    outside.read = read_document_file;
    std::vector<Fault> faults;
    if (folders.styles) {
        faults = add_styles(*folders.styles, outside);
    }
    if (folders.ingredients) {
        const auto more = add_ingredients(*folders.ingredients, outside);
        faults.insert(faults.end(), more.begin(), more.end());
    }
    if (!faults.empty()) {
        return faults;
    }
    return Library(embedded, std::move(outside));
}

}  // namespace entrywise
