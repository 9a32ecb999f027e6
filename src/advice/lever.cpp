#include "advice/lever.hpp"

#include <algorithm>
#include <string_view>

#include "advice/levers_on_ingredients.hpp"
#include "advice/levers_on_settings.hpp"

namespace entrywise {

namespace {

bool is_any_of(std::string_view word, std::initializer_list<std::string_view> words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

}  // namespace

std::vector<Lever> levers_for(const Finding& finding, const Recipe& recipe, const Beer& beer,
                              const Style& style) {
    const std::string& attribute = finding.attribute;
    if (attribute == "hop") {
        return levers_on_late_hops(finding, recipe, beer, style);
    }
    if (is_any_of(attribute, {"body", "finish", "sweetness"})) {
        std::vector<Lever> levers = lever_on_mash(recipe);
        const std::vector<Lever> gas = lever_on_carbonation(recipe, beer, style);
        levers.insert(levers.end(), gas.begin(), gas.end());
        return levers;
    }
    if (is_any_of(attribute, {"alcohol", "warmth"})) {
        return lever_on_strength(recipe);
    }
    if (attribute == "creaminess") {
        std::vector<Lever> levers = lever_on_carbonation(recipe, beer, style);
        const std::vector<Lever> grain = lever_on_creamy_grain(finding, recipe, beer);
        levers.insert(levers.end(), grain.begin(), grain.end());
        return levers;
    }
    if (is_any_of(attribute, {"carbonation", "head_size", "head_retention"})) {
        return lever_on_carbonation(recipe, beer, style);
    }
    if (is_any_of(attribute, {"ester", "phenol"})) {
        return lever_on_fermentation(recipe);
    }
    if (is_any_of(attribute, {"bitterness", "balance"})) {
        return levers_on_bittering_hops(finding, recipe, beer);
    }
    return largest_source(finding, recipe, beer);
}

}  // namespace entrywise
