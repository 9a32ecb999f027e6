#include "reading/measures_of.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>
#include <string_view>
#include <vector>

namespace entrywise {

namespace {

constexpr std::array<std::string_view, 7> of_pounds{"lb", "lbs", "pound", "pounds", "oz", "ounce", "ounces"};
constexpr std::array<std::string_view, 2> of_fahrenheit{"F", "f"};
constexpr std::array<std::string_view, 6> of_gallons{"gal", "gallon", "gallons", "qt", "quart", "quarts"};

/// The texts under a key of a node and of all that stands in it.
void gather(const Node& node, std::string_view key, std::vector<std::string_view>& texts) {
    for (const Node& item : node.items) {
        gather(item, key, texts);
    }
    for (const Entry& entry : node.entries) {
        if (entry.key == key && entry.value.kind == NodeKind::scalar) {
            texts.emplace_back(entry.value.text);
        }
        gather(entry.value, key, texts);
    }
}

bool is_letter(char letter) {
    return std::isalpha(static_cast<unsigned char>(letter)) != 0;
}

/// `oz` of `4 lb 6 oz`, `F` of `152 °F`: a spread stands behind the number, before the unit.
std::string_view last_word(std::string_view text) {
    while (!text.empty() && !is_letter(text.back())) {
        text.remove_suffix(1);
    }
    const auto before = std::find_if_not(text.rbegin(), text.rend(), is_letter);
    return text.substr(static_cast<std::size_t>(text.rend() - before));
}

template <std::size_t count>
bool most_are_of(const std::vector<std::string_view>& texts,
                 const std::array<std::string_view, count>& units) {
    const auto of_units = std::count_if(texts.begin(), texts.end(), [&units](std::string_view text) {
        return std::find(units.begin(), units.end(), last_word(text)) != units.end();
    });
    return 2 * static_cast<std::size_t>(of_units) > texts.size();
}

}  // namespace

Measures measures_of(const Node& recipe) {
    std::vector<std::string_view> masses;
    std::vector<std::string_view> temperatures;
    std::vector<std::string_view> volumes;
    gather(recipe, "mass", masses);
    gather(recipe, "temperature", temperatures);
    gather(recipe, "volume", volumes);
    return {.pounds = most_are_of(masses, of_pounds),
            .fahrenheit = most_are_of(temperatures, of_fahrenheit),
            .gallons = most_are_of(volumes, of_gallons)};
}

}  // namespace entrywise
