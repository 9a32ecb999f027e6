#pragma once

#include <string>
#include <vector>

#include "advice/mending_lever.hpp"
#include "advice/mending_means.hpp"
#include "brewing/beer.hpp"
#include "recipe/ingredients.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"

namespace entrywise {

// The levers of a recipe, a file for each family. None of them lets a brewer do what no brewer does: amounts
// stay within what a wort or a beer bears, temperatures within what enzymes and the yeast bear, carbonation
// well below what common bottles bear. Limits are common practice of brewing at home unless their source
// says otherwise.

/// All fermentables together, and the volume that they are thinned to: told as one change each. They come
/// first, so that an amount set by itself is not scaled again.
std::vector<MendingLever> strength_levers(const Recipe& recipe);

/// The amount of each malt, sugar and extract; those that season can be left out. What the style calls
/// unusual is not raised, and is given up more easily.
std::vector<MendingLever> grist_levers(const Recipe& recipe, const Style& style);

/// The amount of each hop addition, and the minutes that it is boiled. What the style calls unusual is not
/// raised, and is given up more easily.
std::vector<MendingLever> hop_levers(const Recipe& recipe, const Style& style);

/// The temperature of the rest that converts the mash, and the length of the boil.
std::vector<MendingLever> mash_levers(const Recipe& recipe);

/// Temperature within the yeast's range, pitch, time on the yeast, a diacetyl rest.
std::vector<MendingLever> fermentation_levers(const Recipe& recipe);

/// Another class of yeast that is customary for the style, fermented within its range.
std::vector<MendingLever> yeast_levers(const Recipe& recipe, const Style& style,
                                       const IngredientTables& pantry);

/// Carbonation, weeks in the cold, finings, filter.
std::vector<MendingLever> packaging_levers(const Recipe& recipe, const Beer& beer, const Style& style);

/// The amount of each spice, salt or acid, and such as the style asks for.
std::vector<MendingLever> extra_levers(const Recipe& recipe, const Style& style);

/// Malts, grains and sugars that are customary for the style and that the recipe does not have, added or in
/// the place of the largest base malt.
std::vector<MendingLever> new_malt_levers(const Recipe& recipe, const Style& style,
                                          const IngredientTables& pantry);

/// Hop additions: of a cultivar that the recipe has, or of one from a family that is customary for the style,
/// early, late or dry; or that one in the place of a cultivar that the recipe has.
std::vector<MendingLever> new_hop_levers(const Recipe& recipe, const Style& style,
                                         const IngredientTables& pantry);

/// A dry hop of a cultivar that the recipe has or that the style customarily takes.
std::vector<MendingLever> dry_hop_levers(const Recipe& recipe, const Style& style,
                                         const IngredientTables& pantry);

/// What can still be done to a finished beer besides dry hop and packaging: deaerated water, and a part of
/// another beer, of which there are as many as names.
std::vector<MendingLever> finished_beer_levers(const std::vector<std::string>& other_beers);

/// All of these that a stage leaves, those for the whole recipe first.
std::vector<MendingLever> levers_of(const Recipe& recipe, const Beer& beer, const Style& style,
                                    const MendingMeans& means, Stage stage);

/// Positions of what is added, which no line of a recipe has.
inline constexpr int first_added_line = 500000;

}  // namespace entrywise
