#pragma once

#include <optional>
#include <string_view>

#include "quantity/quantities.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What a yeast gives to the nose and palate, as levels on the intensity scale.
struct YeastLevels {
    double ester = 0.0;
    double phenol = 0.0;
    double diacetyl = 0.0;
    double sulfur = 0.0;
};

/// What a class of yeast gives, handled well, at the middle of its temperature range, by the name that is
/// customary for a style: as recipes/ingredients/yeast.yaml has it. Nothing for other names.
std::optional<YeastLevels> levels_of_yeast(std::string_view name);

/// What the typical yeasts of a style give in a beer of this original gravity, on average; souring bacteria
/// count only where there is no yeast beside them. Nothing where none is known.
std::optional<YeastLevels> customary_yeast(const Custom& custom, SpecificGravity original_gravity);

}  // namespace entrywise
