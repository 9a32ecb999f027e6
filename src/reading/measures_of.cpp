#include "reading/measures_of.hpp"

#include <algorithm>
#include <cctype>
#include <string_view>
#include <vector>

#include "quantity/units.hpp"

namespace entrywise {

namespace {

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

/// Whether most of what stands under the key is written in units of the US.
template <class Quantity>
bool is_of_the_us(const Node& recipe, std::string_view key) {
    std::vector<std::string_view> texts;
    gather(recipe, key, texts);
    const auto of_the_us = std::count_if(texts.begin(), texts.end(), [](std::string_view text) {
        const UnitSpelling* const unit = unit_spelled(kind_of<Quantity>(), last_word(text));
        return unit != nullptr && unit->of_the_us;
    });
    return 2 * static_cast<std::size_t>(of_the_us) > texts.size();
}

}  // namespace

Measures measures_of(const Node& recipe) {
    return {.pounds = is_of_the_us<Mass>(recipe, "mass"),
            .fahrenheit = is_of_the_us<Temperature>(recipe, "temperature"),
            .gallons = is_of_the_us<Volume>(recipe, "volume")};
}

}  // namespace entrywise
