#pragma once

#include <optional>
#include <string>

#include "interchange/draft.hpp"
#include "reading/known_ingredients.hpp"

namespace entrywise {

/// A name of the tables that stands for a name in a file, and by what it was found where the names alone do
/// not tell (`by its color`); empty where they do.
struct Match {
    std::string name;
    std::string by;
};

/// The known ingredient that a free name means; nothing where none fits. Tried in this order: the name or an
/// alias; the name without what stands in brackets, origins and marks, its words in any order, with or
/// without `malt`; the longest run of its words that is a known name, unless a word is left over that makes
/// another ingredient of it (`unmalted`, `smoked`); for crystal malts, roasted grains, base malts and malt
/// extracts the known one of nearest color; the nearest word, if it starts with the same letter.
std::optional<Match> match_fermentable(const DraftFermentable& fermentable, const KnownIngredients& known);

/// The same for a hop cultivar.
std::optional<Match> match_hop(const std::string& name, const KnownIngredients& known);

/// The class of a culture: by its name, or by the words in it that tell where such yeast is used, or by its
/// type and attenuation. No maker's catalog is consulted.
std::optional<Match> match_yeast(const DraftYeast& yeast, const KnownIngredients& known);

/// Whether a name is one that the tables hold, letter case aside.
bool is_name_of(const std::string& name, const std::string& known_name);

}  // namespace entrywise
