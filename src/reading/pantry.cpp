#include "reading/pantry.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace entrywise {

namespace {

/// A family, and what of it is taken first.
struct Family {
    std::string_view name;
    std::array<std::string_view, 3> members;
};

constexpr std::array<Family, 12> grist_families{{
    {"crystal", {"crystal medium", "crystal light", "crystal dark"}},
    {"roasted", {"chocolate malt", "dehusked roasted malt dark", "roasted barley"}},
    {"toasted", {"biscuit malt", "aromatic malt", "melanoidin malt"}},
    {"sugar", {"sucrose", "invert sugar medium", {}}},
    {"wheat", {"wheat malt", "flaked wheat", {}}},
    {"oats", {"flaked oats", {}, {}}},
    {"corn", {"flaked corn", {}, {}}},
    {"rice", {"flaked rice", {}, {}}},
    {"rye", {"rye malt", {}, {}}},
    {"smoked", {"beech-smoked malt", {}, {}}},
    {"spelt", {"spelt malt", {}, {}}},
    {"lactose", {"lactose", {}, {}}},
}};

constexpr std::array<Family, 7> hop_families{{
    {"american", {"Cascade", "Centennial", {}}},
    {"new-world", {"Nelson Sauvin", {}, {}}},
    {"german-traditional", {"Hallertau Mittelfrueh", "Tettnanger", {}}},
    {"czech", {"Saaz", {}, {}}},
    {"slovenian-polish", {"Styrian Goldings", {}, {}}},
    {"english", {"East Kent Goldings", "Fuggle", {}}},
    {"belgian-french", {"Strisselspalt", {}, {}}},
}};

bool holds(const std::vector<std::string>& words, std::string_view word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

/// The words with those that name a family replaced by its members; each once, none that is unusual.
template <std::size_t count>
std::vector<std::string> spelled_out(const std::vector<const std::vector<std::string>*>& lists,
                                     const std::array<Family, count>& families,
                                     const std::vector<std::string>& unusual) {
    std::vector<std::string> names;
    const auto add = [&](std::string_view name) {
        if (!name.empty() && !holds(names, name) && !holds(unusual, name)) {
            names.emplace_back(name);
        }
    };
    for (const std::vector<std::string>* list : lists) {
        for (const std::string& word : *list) {
            const auto family = std::find_if(families.begin(), families.end(),
                                             [&](const Family& each) { return each.name == word; });
            if (family == families.end()) {
                add(word);
            } else {
                std::for_each(family->members.begin(), family->members.end(), add);
            }
        }
    }
    return names;
}

template <class Ingredient>
void stock(const std::vector<std::string>& names, const KnownIngredients& known,
           std::optional<Ingredient> (KnownIngredients::*find)(const std::string&) const,
           std::vector<Ingredient>& shelf) {
    for (const std::string& name : names) {
        if (auto ingredient = (known.*find)(name)) {
            shelf.push_back(*std::move(ingredient));
        }
    }
}

}  // namespace

IngredientTables pantry_of(const Style& style, const KnownIngredients& known) {
    const Custom& custom = style.custom;
    IngredientTables pantry;
    stock(spelled_out({&custom.grist_base, &custom.grist_typical, &custom.grist_possible}, grist_families,
                      custom.grist_unusual),
          known, &KnownIngredients::fermentable, pantry.fermentables);
    stock(spelled_out({&custom.hops_typical, &custom.hops_possible}, hop_families, custom.hops_unusual),
          known, &KnownIngredients::hop, pantry.hops);
    stock(spelled_out({&custom.yeast_typical, &custom.yeast_possible}, std::array<Family, 0>{}, {}), known,
          &KnownIngredients::yeast, pantry.yeasts);
    return pantry;
}

}  // namespace entrywise
