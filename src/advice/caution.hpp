#pragma once

#include <string>
#include <vector>

#include "brewing/beer.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// Something about a recipe that can hurt someone, told where it applies.
struct Caution {
    std::string kind;  ///< pressure, allergen, alcohol or botanical
    std::string text;

    bool operator==(const Caution&) const = default;
};

/// Adds what is not among them yet.
void add_new(const std::vector<Caution>& more, std::vector<Caution>& cautions);

/// What a recipe holds of that which food labels must name, each once, in alphabetical order: `gluten`,
/// `milk`, `fish`, and nuts by the name that the recipe gives them.
std::vector<std::string> allergens_of(const Recipe& recipe);

/// The cautions that apply to a recipe and what it makes.
std::vector<Caution> cautions_of(const Recipe& recipe, const Beer& beer);

}  // namespace entrywise
