#include "sensing/palate.hpp"

#include <algorithm>
#include <array>

#include "base/piecewise.hpp"

namespace entrywise {

double body_level(Extract real_extract, AlcoholByVolume alcohol, Concentration grain_body,
                  Carbonation carbonation, bool nitrogen) {
    constexpr std::array<Corner, 9> steps{{{0.0, 0.0},
                                           {2.0, 1.0},
                                           {2.95, 2.0},
                                           {3.8, 3.0},
                                           {4.8, 4.0},
                                           {5.9, 5.0},
                                           {7.2, 6.0},
                                           {9.0, 7.0},
                                           {9.1, 7.0}}};
    constexpr double dry_strength_from = 6.0;
    constexpr double easing_per_percent = 0.25;
    constexpr double gain_per_gram_of_oats = 0.015;
    constexpr double most_from_grain = 1.0;
    constexpr double nitrogen_gain = 0.5;
    constexpr double lively_from = 2.6;
    constexpr double thinning_per_volume = 0.7;
    const double strength = std::max(in(alcohol, percent_by_volume) - dry_strength_from, 0.0);
    const double fullness = in(real_extract, plato) - easing_per_percent * strength;
    const double from_grain =
        std::min(gain_per_gram_of_oats * in(grain_body, gram_per_liter), most_from_grain);
    const double thinned = thinning_per_volume * std::max(in(carbonation, volume_of_co2) - lively_from, 0.0);
    const double level =
        on_line_through(steps, fullness) + from_grain + (nitrogen ? nitrogen_gain : 0.0) - thinned;
    return std::clamp(level, 0.0, 7.0);
}

double sweetness_index(Extract real_extract, AlcoholByVolume alcohol, Concentration caramel,
                       Concentration lactose, Bitterness bitterness, Carbonation carbonation, double sour) {
    constexpr double easily_tasted_extract = 5.0;
    constexpr double offset = 2.5;
    constexpr double above_easily_tasted = 0.5;
    constexpr double per_percent_alcohol = 0.15;
    constexpr double per_gram_caramel = 0.025;
    constexpr double per_gram_lactose = 0.08;
    constexpr double per_ibu = 0.05;
    constexpr double per_volume = 0.8;
    constexpr double usual_carbonation = 2.5;
    constexpr double per_step_sour = 0.3;
    const double extract = in(real_extract, plato);
    return std::min(extract, easily_tasted_extract) - offset +
           above_easily_tasted * std::max(extract - easily_tasted_extract, 0.0) +
           per_percent_alcohol * (in(alcohol, percent_by_volume)) +
           per_gram_caramel * in(caramel, gram_per_liter) + per_gram_lactose * in(lactose, gram_per_liter) -
           per_ibu * (in(bitterness, ibu)) -
           per_volume * (in(carbonation, volume_of_co2) - usual_carbonation) - per_step_sour * sour;
}

double finish_level(double sweetness_index) {
    constexpr std::array<Corner, 7> steps{
        {{-0.8, 0.0}, {0.6, 1.0}, {1.8, 2.0}, {2.9, 3.0}, {4.0, 4.0}, {5.2, 5.0}, {6.5, 6.0}}};
    return on_line_through(steps, sweetness_index);
}

double sweetness_level(double sweetness_index) {
    constexpr std::array<Corner, 6> steps{
        {{-1.0, 0.0}, {0.6, 1.0}, {1.6, 2.0}, {3.4, 4.0}, {5.2, 6.0}, {6.5, 7.0}}};
    return on_line_through(steps, sweetness_index);
}

double carbonation_level(Carbonation carbonation) {
    constexpr std::array<Corner, 7> steps{
        {{0.5, 0.0}, {1.1, 1.0}, {1.55, 2.0}, {2.0, 3.0}, {2.4, 4.0}, {2.75, 5.0}, {3.2, 6.0}}};
    constexpr double very_high_from = 3.8;
    const double volumes = in(carbonation, volume_of_co2);
    const double beyond =
        std::clamp((volumes - steps.back().at) / (very_high_from - steps.back().at), 0.0, 1.0);
    return on_line_through(steps, volumes) + beyond;
}

double warmth_level(AlcoholByVolume alcohol, Extract real_extract) {
    constexpr std::array<Corner, 7> steps{
        {{5.4, 0.0}, {6.4, 1.0}, {7.4, 2.0}, {8.6, 3.3}, {10.3, 4.7}, {12.3, 6.0}, {15.0, 7.0}}};
    constexpr double cushion_from = 6.0;
    constexpr double cushion_per_plato = 0.15;
    constexpr double most_cushion = 1.0;
    const double cushion =
        std::clamp(cushion_per_plato * (in(real_extract, plato) - cushion_from), 0.0, most_cushion);
    return std::max(on_line_through(steps, in(alcohol, percent_by_volume)) - cushion, 0.0);
}

double alcohol_level(AlcoholByVolume alcohol) {
    constexpr std::array<Corner, 6> steps{
        {{5.5, 0.0}, {7.0, 1.0}, {8.5, 2.0}, {10.0, 3.0}, {12.0, 4.5}, {15.0, 6.0}}};
    return on_line_through(steps, in(alcohol, percent_by_volume));
}

double creaminess_level(double body, Concentration grain_body, Concentration lactose, Carbonation carbonation,
                        bool nitrogen) {
    constexpr double from_body = 0.5;
    constexpr double light = 2.5;
    constexpr double per_gram_grain = 0.03;
    constexpr double most_from_grain = 2.0;
    constexpr double per_gram_lactose = 0.06;
    constexpr double nitrogen_gain = 2.0;
    constexpr double lively_from = 2.6;
    constexpr double loss_per_volume = 1.0;
    const double grain = std::min(per_gram_grain * in(grain_body, gram_per_liter), most_from_grain);
    const double lively = loss_per_volume * std::max(in(carbonation, volume_of_co2) - lively_from, 0.0);
    const double level = from_body * std::max(body - light, 0.0) + grain +
                         per_gram_lactose * in(lactose, gram_per_liter) + (nitrogen ? nitrogen_gain : 0.0) -
                         lively;
    return std::clamp(level, 0.0, 7.0);
}

double astringency_level(Concentration roast, Concentration dry_hops) {
    constexpr double roast_free_to = 15.0;
    constexpr double per_gram_roast = 0.06;
    constexpr double hops_free_to = 6.0;
    constexpr double per_gram_hops = 0.15;
    const double from_roast = per_gram_roast * std::max(in(roast, gram_per_liter) - roast_free_to, 0.0);
    const double from_hops = per_gram_hops * std::max(in(dry_hops, gram_per_liter) - hops_free_to, 0.0);
    return std::min(from_roast + from_hops, 7.0);
}

}  // namespace entrywise
