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
/// liter. Where roasted grain is typical, 70 % of what is beyond the color of pale malt is from it, 60 %
/// where it is typical without its husk; where any is possible, what is beyond 24 malt color units; in other
/// styles, whose dark color is that of Munich and crystal malt or of candi, what is beyond 40. Working
/// values: styles of the Beer Judge Certification Program, Beer Style Guidelines, 2021, that word roast, each
/// left out of the fit, lie 0.39 of a step outside their words with them, 0.59 with 24 units in every style.
Concentration customary_roast(const Custom& custom, Color color);

}  // namespace entrywise
