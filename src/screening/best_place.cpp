#include "screening/best_place.hpp"

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

}  // namespace entrywise
