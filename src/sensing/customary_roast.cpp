#include "sensing/customary_roast.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "brewing/color.hpp"

namespace entrywise {

namespace {

constexpr std::string_view whole_group = "roasted";

constexpr std::array<std::string_view, 9> with_husk{
    whole_group,      "pale chocolate malt", "chocolate malt", "coffee malt",       "black malt",
    "roasted barley", "black barley",        "roasted wheat",  "chocolate rye malt"};

/// What darkens a style: the malt color units that come without roasted grain, the share of roasted grain in
/// what is beyond, and how much of its color it tastes of.
struct Darkening {
    double units_without;
    double share = 1.0;
    double taste = 1.0;
};

Darkening customary_darkening(const Custom& custom) {
    constexpr double pale_malt = 5.0;
    const std::vector<std::string>& typical = custom.grist_typical;
    if (std::any_of(typical.begin(), typical.end(), is_roasted_grain)) {
        return {.units_without = pale_malt, .share = 0.7};
    }
    if (std::any_of(typical.begin(), typical.end(), is_dehusked_roasted_grain)) {
        return {.units_without = pale_malt, .share = 0.6, .taste = roast_without_husk};
    }
    // A roasted malt that is named alone is one of a pinch for color.
    const std::vector<std::string>& possible = custom.grist_possible;
    const bool any_is_possible = std::find(possible.begin(), possible.end(), whole_group) != possible.end();
    return {.units_without = any_is_possible ? 24.0 : 40.0};
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
    const auto [units_without, share, taste] = customary_darkening(custom);
    const double beyond = std::max(in(morey_load(color), malt_color_unit) - units_without, 0.0);
    return taste * share * beyond / units_of_a_gram_of_black_malt * gram_per_liter;
}

}  // namespace entrywise
