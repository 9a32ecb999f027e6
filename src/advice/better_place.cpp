#include <algorithm>

#include "advice/mend.hpp"

namespace entrywise {

std::vector<RankedStyle> better_places(const Mending& mending, const std::vector<Style>& styles,
                                       const Handbook& handbook) {
    constexpr std::size_t looked_at = 5;
    constexpr std::size_t most = 3;
    constexpr double least_gain = 1.0;
    const StyleName entered{mending.style.guide, mending.style.code};
    Ranking ranking = rank(mending.recipe, styles, handbook, entered);
    std::vector<RankedStyle> places;
    for (std::size_t index = 0; index < std::min(looked_at, ranking.styles.size()); ++index) {
        RankedStyle& place = ranking.styles[index];
        const bool gains = place.at_risk.median + least_gain <= mending.sheet.total.median;
        if (gains && ranking.declared != index && places.size() < most) {
            places.push_back(std::move(place));
        }
    }
    return places;
}

}  // namespace entrywise
