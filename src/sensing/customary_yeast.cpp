#include "sensing/customary_yeast.hpp"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "brewing/yeast_character.hpp"

namespace entrywise {

namespace {

constexpr std::string_view souring_bacteria = "lactic culture";

constexpr std::array<std::pair<std::string_view, YeastLevels>, 27> classes{
    {{"american ale", {1.5, 0.0, 0.0, 0.0}},
     {"american ale fruity", {4.0, 0.0, 0.5, 0.0}},
     {"american wheat", {1.5, 0.0, 0.0, 0.5}},
     {"low alcohol", {1.5, 0.0, 0.5, 0.5}},
     {"high gravity neutral", {2.5, 0.0, 0.0, 0.0}},
     {"english ale", {3.0, 0.0, 1.0, 0.0}},
     {"english ale dry", {2.5, 0.0, 0.0, 0.5}},
     {"scottish ale", {1.5, 0.0, 1.0, 0.0}},
     {"irish ale", {2.0, 0.0, 0.5, 0.0}},
     {"kolsch", {1.5, 0.0, 0.0, 0.5}},
     {"altbier", {1.5, 0.0, 0.0, 0.5}},
     {"kveik", {3.0, 0.0, 0.0, 0.0}},
     {"bavarian wheat", {4.5, 4.5, 0.0, 0.5}},
     {"belgian wit", {3.5, 2.0, 0.0, 0.5}},
     {"belgian abbey", {4.0, 2.0, 0.0, 0.0}},
     {"belgian strong golden", {4.5, 2.5, 0.0, 0.5}},
     {"trappist", {4.0, 2.5, 0.0, 0.0}},
     {"biere de garde", {2.0, 0.5, 0.0, 0.5}},
     {"saison", {4.5, 3.5, 0.0, 0.5}},
     {"saison diastatic", {4.5, 4.0, 0.0, 0.5}},
     {"german lager", {0.5, 0.0, 0.0, 1.5}},
     {"czech lager", {0.5, 0.0, 1.0, 1.5}},
     {"american lager", {1.0, 0.0, 0.0, 1.5}},
     {"california lager", {1.5, 0.0, 0.0, 0.5}},
     {"brettanomyces", {3.5, 1.0, 0.0, 0.0}},
     {"mixed culture", {3.5, 1.0, 0.0, 0.5}},
     {souring_bacteria, {0.0, 0.0, 0.0, 0.0}}}};

}  // namespace

std::optional<YeastLevels> levels_of_yeast(std::string_view name) {
    const auto* const found = std::find_if(classes.begin(), classes.end(),
                                           [name](const auto& yeast) { return yeast.first == name; });
    return found == classes.end() ? std::nullopt : std::optional(found->second);
}

std::optional<YeastLevels> customary_yeast(const Custom& custom, SpecificGravity original_gravity) {
    std::vector<std::string> names = custom.yeast_typical;
    std::erase_if(names, [](const std::string& name) { return !levels_of_yeast(name); });
    if (names.size() > 1) {
        std::erase(names, souring_bacteria);
    }
    if (names.empty()) {
        return std::nullopt;
    }
    YeastLevels mean;
    for (const std::string& name : names) {
        const YeastLevels levels = *levels_of_yeast(name);
        mean.ester += levels.ester / static_cast<double>(names.size());
        mean.phenol += levels.phenol / static_cast<double>(names.size());
        mean.diacetyl += levels.diacetyl / static_cast<double>(names.size());
        mean.sulfur += levels.sulfur / static_cast<double>(names.size());
    }
    mean.ester = ester_level(mean.ester, 0.0 * kelvin, original_gravity);
    return mean;
}

}  // namespace entrywise
