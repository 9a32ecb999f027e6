#pragma once

#include <optional>
#include <string_view>

#include "quantity/quantities.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The toast that a gram of a malt brings, of biscuit malt 1, by the name that is customary for a style: as
/// recipes/ingredients/fermentables.yaml has it. Nothing for what brings none.
std::optional<double> toast_of_malt(std::string_view name);

/// The toast in a beer of this original extract that is brewed as is customary for its style, in grams of
/// biscuit malt per liter: 85 % of the grist are the usual base malts in equal parts, of which the toastiest
/// pale malt stands for every pale malt, beside them stands a tenth of each typical malt that is kilned and a
/// twentieth of each that is toasted (working values).
Concentration customary_toast(const Custom& custom, Extract original_extract);

}  // namespace entrywise
