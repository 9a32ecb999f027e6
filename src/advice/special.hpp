#pragma once

#include <set>
#include <string_view>
#include <vector>

#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What takes a beer out of the plain styles.
enum class Special { fruit, spice, wood, smoke, brettanomyces, souring, grain, sugar };

/// What of it is in a recipe. `grain` is any that is not barley, wheat or maize; `sugar` any with a flavor of
/// its own.
std::set<Special> specials_in(const Recipe& recipe);

/// Whether a style has a place for it: it names it, asks for its level, or it is customary.
bool has_place_for(const Style& style, Special special);

/// Whether a style is one that stands on another: it prints no numbers of its own and asks for something
/// special.
bool is_specialty(const Style& style);

/// Whether a style prints numbers of its own and still stands on another, with something special in it.
bool is_made_of_another(const Style& style);

/// Whether a recipe has what a specialty style asks for. What no recipe tells, such as the spirit that a
/// barrel held, it never has.
bool has_what_it_asks_for(const Style& specialty, const std::set<Special>& specials);

/// `coriander`, `beech-smoked malt`: the ingredients of a recipe that are special in that way, by its names.
std::vector<std::string_view> ingredients_that_are(Special special, const Recipe& recipe);

}  // namespace entrywise
