// The yardstick of the benchmark: a whole process that parses a recipe with yaml-cpp and does nothing else.

#include <yaml-cpp/yaml.h>

#include <exception>

int main(int count, char** arguments) {
    if (count != 2) {
        return 2;
    }
    try {
        return YAML::LoadFile(arguments[1]).IsMap() ? 0 : 1;
    } catch (const std::exception&) {
        return 1;
    }
}
