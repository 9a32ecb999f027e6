#include "reading/library_folders.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <system_error>
#include <utility>
#include <vector>

#include "base/text.hpp"
#include "reading/document_file.hpp"
#include "reading/ingredient_reader.hpp"

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

/// Puts the entries of a file before those known, and takes out the ones that they replace.
template <class Ingredient>
std::vector<Fault> put_first(Outcome<std::vector<Ingredient>> read, std::vector<Ingredient>& known) {
    if (!read) {
        return read.faults;
    }
    std::vector<Ingredient> merged = *std::move(read.value);
    for (Ingredient& ingredient : known) {
        const bool is_replaced = std::any_of(merged.begin(), merged.end(), [&](const Ingredient& replacing) {
            return lowered(replacing.name) == lowered(ingredient.name);
        });
        if (!is_replaced) {
            merged.push_back(std::move(ingredient));
        }
    }
    known = std::move(merged);
    return {};
}

std::vector<Fault> add_ingredient_file(const std::string& file, IngredientTables& tables) {
    const auto document = read_document_file(file);
    if (!document) {
        return document.faults;
    }
    const Node* format = value_of(*document, "format");
    const std::string kind = format == nullptr ? "" : format->text;
    if (kind.starts_with("entrywise/hops/")) {
        return put_first(read_hops(*document, file), tables.hops);
    }
    if (kind.starts_with("entrywise/yeast/")) {
        return put_first(read_yeasts(*document, file), tables.yeasts);
    }
    return put_first(read_fermentables(*document, file), tables.fermentables);
}

std::vector<Fault> add_ingredients(const fs::path& folder, IngredientTables& tables) {
    const auto listing = listed_folder(folder);
    std::vector<Fault> faults = listing.faults;
    for (const fs::path& file : listing ? listing->files : std::vector<fs::path>()) {
        const auto more = add_ingredient_file(file.string(), tables);
        faults.insert(faults.end(), more.begin(), more.end());
    }
    return faults;
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
        const auto more = add_ingredients(*folders.ingredients, outside.ingredients);
        faults.insert(faults.end(), more.begin(), more.end());
    }
    if (!faults.empty()) {
        return faults;
    }
    return Library(embedded, std::move(outside));
}

}  // namespace entrywise
