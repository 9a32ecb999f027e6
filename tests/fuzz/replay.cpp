// Gives each file of the corpus to its reader: replay FOLDER, with a folder a reader below it.
#include <algorithm>
#include <array>
#include <filesystem>
#include <iostream>
#include <string>
#include <string_view>
#include <vector>

#include "base/file.hpp"
#include "tests/fuzz/targets.hpp"

using namespace entrywise;

namespace {

struct Target {
    std::string_view folder;
    void (*read)(std::string_view bytes);
};

constexpr std::array targets = {
    Target{"quantity", fuzz::read_quantity},         Target{"recipe_file", fuzz::read_recipe_file},
    Target{"style_file", fuzz::read_style_file},     Target{"competition_file", fuzz::read_competition_file},
    Target{"entry_table", fuzz::read_entry_table},   Target{"entry_line", fuzz::read_entry_line},
    Target{"beerjson", fuzz::read_beerjson},         Target{"beerxml", fuzz::read_beerxml},
    Target{"recipe_table", fuzz::read_recipe_table},
};

std::vector<std::string> files_in(const std::string& folder) {
    std::vector<std::string> files;
    std::error_code error;
    for (const auto& file : std::filesystem::directory_iterator(folder, error)) {
        files.push_back(file.path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

}  // namespace

int main(int count, char** words) {
    if (count != 2) {
        std::cerr << "usage: replay FOLDER\n";
        return 2;
    }
    constexpr std::size_t most_bytes = 8388608;
    for (const Target& target : targets) {
        const std::vector<std::string> files =
            files_in(std::string(words[1]) + '/' + std::string(target.folder));
        if (files.empty()) {
            std::cerr << "no files for " << target.folder << '\n';
            return 1;
        }
        for (const std::string& file : files) {
            std::cerr << file << '\n';
            target.read(read_file(file, most_bytes).value.value_or(std::string()));
        }
    }
    return 0;
}
