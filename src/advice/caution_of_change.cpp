#include "advice/caution_of_change.hpp"

#include <algorithm>

namespace entrywise {

namespace {

/// Casks are served by gravity and bear little gas, about 1 to 1.5 volumes (common practice); a recipe tells
/// only that it is not bottled.
bool overfills_a_cask(const Recipe& recipe, const Beer& before, const Beer& after) {
    constexpr Carbonation of_cask = 1.8 * volume_of_co2;
    constexpr Carbonation too_much_for_cask = 2.2 * volume_of_co2;
    const bool maybe_cask = !recipe.conditioning.bottled.value_or(true);
    return maybe_cask && before.carbonation.median() <= of_cask &&
           after.carbonation.median() >= too_much_for_cask;
}

}  // namespace

std::vector<Caution> cautions_of_change(const Recipe& before, const Beer& beer_before, const Recipe& after,
                                        const Beer& beer_after) {
    const std::vector<Caution> known = cautions_of(before, beer_before);
    std::vector<Caution> cautions;
    for (const Caution& caution : cautions_of(after, beer_after)) {
        const bool is_known = std::any_of(known.begin(), known.end(), [&](const Caution& each) {
            return each.kind == caution.kind && each.text == caution.text;
        });
        if (!is_known) {
            cautions.push_back(caution);
        }
    }
    if (overfills_a_cask(before, beer_before, beer_after)) {
        cautions.push_back(
            {"pressure",
             "A cask does not bear this much gas: serve it from a keg, or from bottles that do."});
    }
    return cautions;
}

}  // namespace entrywise
