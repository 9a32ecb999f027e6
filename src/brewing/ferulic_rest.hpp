#pragma once

#include <vector>

#include "recipe/recipe.hpp"

namespace entrywise {

/// Steps of clove that a mash rest near 45 °C adds to a phenolic yeast's: it frees the ferulic acid that the
/// yeast turns into 4-vinylguaiacol. Between 0 and 0.6. Source: McMurrough et al., Control of ferulic acid
/// and 4-vinyl guaiacol in brewing, Journal of the Institute of Brewing 102, 1996, and Coghe et al., Ferulic
/// acid release and 4-vinylguaiacol formation during brewing and fermentation, Journal of Agricultural and
/// Food Chemistry 52, 2004 (most at 45 °C, far less from 65 °C); the steps are working values.
double phenol_from_ferulic_rest(const std::vector<MashRest>& mash);

}  // namespace entrywise
