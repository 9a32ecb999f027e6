// The yardstick of the benchmark: a whole process that parses recipes with yaml-cpp and does nothing else.
// Usage: benchmark_parse RECIPE|FOLDER

#include <yaml-cpp/yaml.h>

#include <exception>
#include <filesystem>
#include <string>

namespace {

bool is_parsed(const std::string& file) {
    return YAML::LoadFile(file).IsMap();
}

bool all_are_parsed(const std::string& folder) {
    for (const auto& file : std::filesystem::directory_iterator(folder)) {
        if (!is_parsed(file.path().string())) {
            return false;
        }
    }
    return true;
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 2) {
        return 2;
    }
    try {
        const std::string path = arguments[1];
        return (std::filesystem::is_directory(path) ? all_are_parsed(path) : is_parsed(path)) ? 0 : 1;
    } catch (const std::exception&) {
        return 1;
    }
}
