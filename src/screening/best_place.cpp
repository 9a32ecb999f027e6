#include "screening/best_place.hpp"

#include <algorithm>

#include "advice/ranking.hpp"
#include "base/number.hpp"

namespace entrywise {

namespace {

constexpr std::size_t leading = 3;  // places that are looked at (working value)

BestPlace place_of(const RankedStyle& ranked, std::optional<double> points_in_declared, bool is_declared) {
    BestPlace place;
    place.name = ranked.name;
    place.title = ranked.title;
    place.base = ranked.base;
    place.at_risk = ranked.at_risk;
    place.is_declared = is_declared;
    if (points_in_declared && !is_declared) {
        // As the two are printed, so that the difference is the one that a reader works out.
        constexpr int printed_decimals = 1;
        place.gain =
            rounded(*points_in_declared, printed_decimals) - rounded(place.at_risk.median, printed_decimals);
    }
    return place;
}

}  // namespace

std::optional<BestPlace> best_place(const Recipe& recipe, const std::optional<StyleName>& declared,
                                    std::optional<double> points_in_declared,
                                    const std::vector<Style>& styles, const Handbook& handbook) {
    const Ranking ranking = rank(recipe, styles, handbook, declared);
    if (ranking.styles.empty()) {
        return std::nullopt;
    }
    const std::optional<double> points =
        ranking.declared ? ranking.styles[*ranking.declared].at_risk.median : points_in_declared;
    const auto at = [&](std::size_t index) {
        return place_of(ranking.styles[index], points, ranking.declared == index);
    };
    for (std::size_t index = 0; index < std::min(leading, ranking.styles.size()); ++index) {
        BestPlace place = at(index);
        if (place.gain >= points_worth_a_move) {
            return place;
        }
    }
    return at(0);
}

}  // namespace entrywise
