#include "sensing/customary_roast.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "brewing/color.hpp"

namespace entrywise {

namespace {

constexpr std::array<std::string_view, 9> with_husk{
    "roasted",        "pale chocolate malt", "chocolate malt", "coffee malt",       "black malt",
    "roasted barley", "black barley",        "roasted wheat",  "chocolate rye malt"};

/// Whether roasted grain is typical, and that only without its husk.
bool is_darkened_without_husk(const Custom& custom) {
    const std::vector<std::string>& typical = custom.grist_typical;
    return std::any_of(typical.begin(), typical.end(), is_dehusked_roasted_grain) &&
           std::none_of(typical.begin(), typical.end(), is_roasted_grain);
}

}  // namespace

bool is_roasted_grain(std::string_view name) {
    return std::find(with_husk.begin(), with_husk.end(), name) != with_husk.end();
}

bool is_dehusked_roasted_grain(std::string_view name) {
    return name.starts_with("dehusked roasted malt");
}

Concentration customary_roast(const Custom& custom, Color color) {
    // From its color, 1350 EBC.
    constexpr double units_of_a_gram_of_black_malt = 4.2;
    constexpr double units_without_roast = 24.0;
    const double beyond = std::max(in(morey_load(color), malt_color_unit) - units_without_roast, 0.0);
    const double taste = is_darkened_without_husk(custom) ? roast_without_husk : 1.0;
    return taste * beyond / units_of_a_gram_of_black_malt * gram_per_liter;
}

}  // namespace entrywise
