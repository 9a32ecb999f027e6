#include "screening/best_place.hpp"

#include <algorithm>

#include "advice/ranker.hpp"
#include "base/number.hpp"

namespace entrywise {

namespace {

/// As the two are printed, so that the difference is the one that a reader works out.
double saved(double points_in_declared, double points_in_best) {
    constexpr int printed_decimals = 1;
    return rounded(points_in_declared, printed_decimals) - rounded(points_in_best, printed_decimals);
}

}  // namespace

BestPlace best_place(const EntryPlace& leading, const std::optional<StyleName>& declared,
                     std::optional<double> points_in_declared) {
    BestPlace place;
    place.name = leading.name;
    place.title = leading.title;
    place.base = leading.base;
    place.at_risk = leading.at_risk;
    place.is_declared = declared && are_one_entry(leading.name, *declared);
    if (points_in_declared && !place.is_declared) {
        place.gain = saved(*points_in_declared, place.at_risk.median);
    }
    return place;
}

std::optional<BestPlace> best_place(const Check& check, const LineUp& line_up) {
    const std::optional<EntryPlace> leading =
        leading_place({check.recipe, check.beer, check.profile}, line_up);
    if (!leading) {
        return std::nullopt;
    }
    return best_place(*leading, StyleName{check.style.guide, check.style.code},
                      points_of_the_beer(check.sheet));
}

double points_of_the_beer(const Sheet& sheet) {
    double points = sheet.total.median;
    for (const Finding& finding : sheet.findings) {
        points -= finding.attribute == "declaration" ? finding.points : 0.0;
    }
    return std::max(points, 0.0);
}

}  // namespace entrywise
