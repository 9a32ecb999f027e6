#include "sensing/appearance.hpp"

#include <algorithm>
#include <array>

#include "base/piecewise.hpp"

namespace entrywise {

namespace {

double by_flocculation(Flocculation flocculation) {
    switch (flocculation) {
        case Flocculation::low:
            return -1.0;
        case Flocculation::medium:
            return 0.0;
        case Flocculation::high:
            return 0.4;
    }
    return 0.0;
}

}  // namespace

double clarity_level(const ClarityInputs& inputs) {
    constexpr double home_brewed_and_settled = 4.2;
    constexpr double most = 5.0;
    constexpr double grain_free_to = 25.0;
    constexpr double loss_per_gram_grain = 0.015;
    constexpr double most_from_grain = 1.8;
    constexpr double hops_free_to = 4.0;
    constexpr double loss_per_gram_hops = 0.12;
    constexpr double most_from_hops = 1.0;
    constexpr double haze_positive_loss = 1.5;
    constexpr double fining_gain = 0.6;
    constexpr double filter_gain = 2.0;
    constexpr double gain_per_cold_week = 0.15;
    constexpr double most_from_cold = 0.8;
    const double grain = std::clamp(
        loss_per_gram_grain * (in(inputs.grain_haze, gram_per_liter) - grain_free_to), 0.0, most_from_grain);
    const double hops = std::clamp(loss_per_gram_hops * (in(inputs.dry_hops, gram_per_liter) - hops_free_to),
                                   0.0, most_from_hops);
    const double gains = (inputs.fined ? fining_gain : 0.0) + (inputs.filtered ? filter_gain : 0.0) +
                         std::min(gain_per_cold_week * inputs.cold_weeks, most_from_cold);
    const bool kept_up = inputs.haze_positive && in(inputs.dry_hops, gram_per_liter) > hops_free_to;
    const double level = home_brewed_and_settled + by_flocculation(inputs.flocculation) - grain - hops -
                         (kept_up ? haze_positive_loss : 0.0) + gains;
    return std::clamp(level, 0.0, most);
}

double head_size_level(Carbonation carbonation, Concentration grain_head) {
    constexpr std::array<Corner, 6> by_volumes{
        {{0.8, 1.0}, {1.5, 2.5}, {2.0, 3.5}, {2.5, 4.3}, {3.0, 5.3}, {3.8, 6.5}}};
    constexpr double gain_per_gram = 0.012;
    constexpr double most_from_grain = 1.2;
    const double grain = std::min(gain_per_gram * in(grain_head, gram_per_liter), most_from_grain);
    return std::min(on_line_through(by_volumes, in(carbonation, volume_of_co2)) + grain, 7.0);
}

double head_retention_level(Concentration grain_head, Bitterness bitterness, AlcoholByVolume alcohol,
                            double adjunct_share, Carbonation carbonation, double sour) {
    constexpr double medium = 4.6;
    constexpr double gain_per_gram = 0.014;
    constexpr double most_from_grain = 1.5;
    constexpr std::array<Corner, 3> by_ibu{{{5.0, -0.5}, {20.0, 0.0}, {45.0, 0.6}}};
    const double strong = in(alcohol_that_foam_bears, percent_by_volume);
    const std::array<Corner, 3> by_alcohol{{{strong, 0.0}, {10.0, -0.7}, {13.0, -1.6}}};
    constexpr std::array<Corner, 2> by_adjuncts{{{adjuncts_that_foam_bears, 0.0}, {0.4, -0.9}}};
    constexpr std::array<Corner, 3> by_volumes{{{1.0, -1.2}, {2.1, 0.0}, {3.2, 0.5}}};
    constexpr double loss_per_step_sour = 0.5;
    const double grain = std::min(gain_per_gram * in(grain_head, gram_per_liter), most_from_grain);
    const double level = medium + grain + on_line_through(by_ibu, in(bitterness, ibu)) +
                         on_line_through(by_alcohol, in(alcohol, percent_by_volume)) +
                         on_line_through(by_adjuncts, adjunct_share) +
                         on_line_through(by_volumes, in(carbonation, volume_of_co2)) -
                         loss_per_step_sour * sour;
    return std::clamp(level, 0.0, 7.0);
}

}  // namespace entrywise
