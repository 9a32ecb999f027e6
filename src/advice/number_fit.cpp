#include "advice/number_fit.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "quantity/quantities.hpp"

namespace entrywise {

namespace {

/// A number on its scale: how soft the borders of ranges are, and how far beer at large is spread (working
/// values).
struct Scale {
    double softness;
    double beer_at_large;
};

constexpr Scale of_original_gravity{0.006, 0.1};
constexpr Scale of_final_gravity{0.003, 0.035};
constexpr Scale of_alcohol{0.5, 12.0};
constexpr Scale of_bitterness{0.2, 3.2};  ///< natural logarithm of IBU and five more
constexpr Scale of_color{0.2, 3.0};       ///< natural logarithm of SRM and two more

double plain_gravity(SpecificGravity gravity) {
    return in(gravity, specific_gravity);
}

double plain_alcohol(AlcoholByVolume alcohol) {
    return in(alcohol, percent_by_volume);
}

double bitterness_ratio_scale(Bitterness bitterness) {
    return std::log(in(bitterness, ibu) + 5.0);
}

/// Beyond 40 SRM all is black.
double color_ratio_scale(Color color) {
    return std::log(std::min(in(color, srm), 40.0) + 2.0);
}

double normal_share_below(double deviate) {
    return 0.5 * std::erfc(-deviate / std::numbers::sqrt2);
}

/// The odds against a number at a middle with a width, where beers of the style lie evenly from low to high.
double odds_against(double middle, double width, double low, double high, const Scale& scale) {
    // However far outside, a beer in two hundred of a style is like that (working value).
    constexpr double least = 0.004;
    const double inside =
        normal_share_below((high - middle) / width) - normal_share_below((low - middle) / width);
    const double density = scale.beer_at_large * inside / (high - low + scale.softness);
    return -std::log(density + least * scale.beer_at_large);
}

}  // namespace

NumberFit::NumberFit(const Beer& beer) {
    const auto told = [](const auto& estimate, auto scaled, const Scale& scale) {
        constexpr double widths_of_eight_in_ten = 2.56;
        const auto interval = estimate.interval();
        const double spread = (scaled(interval.high) - scaled(interval.low)) / widths_of_eight_in_ten;
        return Told{scaled(interval.median), std::hypot(spread, scale.softness)};
    };
    told_ = {told(beer.original_gravity.total, plain_gravity, of_original_gravity),
             told(beer.final_gravity, plain_gravity, of_final_gravity),
             told(beer.alcohol, plain_alcohol, of_alcohol),
             told(beer.tasted_bitterness, bitterness_ratio_scale, of_bitterness),
             told(beer.color.total, color_ratio_scale, of_color)};
}

double NumberFit::unlikeliness_in(const StyleRanges& ranges) const {
    const auto of = [](const Told& told, const auto& range, auto scaled, const Scale& scale) {
        const bool closed = range && range->low && range->high;
        return closed
                   ? odds_against(told.middle, told.width, scaled(*range->low), scaled(*range->high), scale)
                   : 0.0;
    };
    return of(told_[0], ranges.original_gravity, plain_gravity, of_original_gravity) +
           of(told_[1], ranges.final_gravity, plain_gravity, of_final_gravity) +
           of(told_[2], ranges.alcohol, plain_alcohol, of_alcohol) +
           of(told_[3], ranges.bitterness, bitterness_ratio_scale, of_bitterness) +
           of(told_[4], ranges.color, color_ratio_scale, of_color);
}

}  // namespace entrywise
