#pragma once

#include <string_view>

#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"
#include "reading/known_ingredients.hpp"

namespace entrywise {

/// Whether a text begins with the header line of a recipe table: at least an ingredient's and an amount's
/// name.
bool starts_as_recipe_table(std::string_view text);

/// A recipe as a table people paste, one ingredient a line, its fields apart by tabs, semicolons or commas as
/// in the header. The columns may stand in any order:
///
///     ingredient   also name, item
///     amount       also mass, weight, quantity
///     use          also add, when, stage: mash, boil, first wort, whirlpool, flameout, dry hop, fermenter,
///     yeast time         also duration alpha, color, extract (also yield), attenuation, temperature, form,
///     kind (also type)
///
/// A unit in the header, `time (min)`, holds for numbers that have none. A line whose ingredient is `name`,
/// `style`, `volume`, `efficiency`, `boil`, `mash`, `fermentation` or `carbonation` says that of the recipe:
/// its amount, and for a mash the rest's temperature and time. Whether a line is malt, hop, yeast or
/// something else the tables tell, then its use, then what else it states. A column of another name is left
/// out and told.
Draft recipe_table_draft(std::string_view text, const KnownIngredients& known, ExchangeLog& log);

}  // namespace entrywise
