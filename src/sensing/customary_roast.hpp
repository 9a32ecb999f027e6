#pragma once

#include <string_view>

#include "quantity/quantities.hpp"
#include "style/style.hpp"

namespace entrywise {

/// Whether a name that is customary for a style is that of roasted grain, or of the whole group, with the
/// husk: without it grain tastes less of roast than it colors.
bool is_roasted_grain(std::string_view name);
bool is_dehusked_roasted_grain(std::string_view name);

/// The roast of grain without husk, of that with it at the same color
/// (recipes/ingredients/fermentables.yaml).
inline constexpr double roast_without_husk = 0.6;

/// The roast in a beer of this color that is brewed as is customary for its style, in grams of black malt per
/// liter: what colors it beyond 24 malt color units, which kilned and crystal malts give (working value);
/// where roasted grain is typical without its husk alone, it tastes of that much less.
Concentration customary_roast(const Custom& custom, Color color);

}  // namespace entrywise
