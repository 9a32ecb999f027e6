#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "knowledge/knowledge.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// How many beers another style leads for when one constant of a map is moved down or up by a fifth.
struct ConstantMoved {
    std::string name;  ///< `body.half_at`
    std::size_t down = 0;
    std::size_t up = 0;

    std::size_t all() const { return down + up; }
};

/// Of every constant in styles/perception.yaml, in the order of the file. Only the constant moves: what was
/// fitted beside it stays, so that this is how much hangs on each alone.
std::vector<ConstantMoved> first_places_changed(const Knowledge& knowledge, const std::vector<Style>& styles,
                                                const std::vector<Recipe>& recipes);

}  // namespace entrywise
