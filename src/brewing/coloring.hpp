#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"
#include "recipe/recipe.hpp"

namespace entrywise {

/// Color of the beer from the color of its grist by Morey's curve, with the error of that curve: 20 % for
/// pale beer, 30 % for dark (one standard deviation, working values: no published set of recipes with
/// measured color was found). A measured color replaces it; the shares of the malts stay.
Traced<Color> coloring(const Process& process, const Wort& wort, const Measured& measured,
                       Deviates& deviates);

}  // namespace entrywise
