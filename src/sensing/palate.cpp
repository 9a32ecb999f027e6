#include "sensing/palate.hpp"

#include <algorithm>
#include <array>

#include "base/piecewise.hpp"
#include "sensing/saturation.hpp"

namespace entrywise {

double body_level(const BodyMap& map, const BodyInputs& inputs) {
    constexpr double dry_strength_from = 6.0;
    constexpr double usual_richness = 1.0;
    // As rich as the darkest kilned malts, the end of what the fit has seen.
    constexpr double richest = 2.0;
    constexpr double gain_per_gram_of_oats = 0.015;
    constexpr double most_from_grain = 1.0;
    constexpr double nitrogen_gain = 0.5;
    // The curve ends above the scale: no beer is so full that more would not be felt (working value).
    constexpr double end_of_curve = 10.0 / 7.0;
    constexpr Carbonation usual_carbonation = 2.5 * volume_of_co2;
    const double strength = std::max(in(inputs.alcohol, percent_by_volume) - dry_strength_from, 0.0);
    const double fullness = in(inputs.real_extract, plato) +
                            map.by_richness * (std::min(inputs.malt_richness, richest) - usual_richness) -
                            map.easing_by_alcohol * strength;
    const double from_grain =
        std::min(gain_per_gram_of_oats * in(inputs.grain_body, gram_per_liter), most_from_grain);
    const double thinned =
        map.thinning_by_carbonation * in(inputs.carbonation - usual_carbonation, volume_of_co2);
    const double level = end_of_curve * saturating_level(fullness, map.curve) + from_grain +
                         (inputs.nitrogen ? nitrogen_gain : 0.0) - thinned;
    return std::clamp(level, 0.0, 7.0);
}

double finish_level(const FinishMap& map, const FinishInputs& inputs) {
    constexpr Extract usual_extract = 4.5 * plato;
    constexpr AlcoholByVolume usual_alcohol = 5.5 * percent_by_volume;
    constexpr Bitterness usual_bitterness = 25.0 * ibu;
    constexpr Carbonation usual_carbonation = 2.5 * volume_of_co2;
    constexpr double by_gram_of_lactose = 0.03;
    const double level = map.of_usual_beer + map.by_extract * in(inputs.real_extract - usual_extract, plato) +
                         map.by_alcohol * in(inputs.alcohol - usual_alcohol, percent_by_volume) +
                         0.1 * map.by_ten_ibu * in(inputs.bitterness - usual_bitterness, ibu) +
                         map.by_carbonation * in(inputs.carbonation - usual_carbonation, volume_of_co2) +
                         map.by_sour * inputs.sour + by_gram_of_lactose * in(inputs.lactose, gram_per_liter);
    return std::clamp(level, 0.0, 6.0);
}

double sweetness_level(const SweetnessMap& map, double finish) {
    constexpr double medium = 3.0;
    return std::clamp(map.at_medium_finish + map.by_finish * (finish - medium), 0.0, 7.0);
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

double alcohol_level(const AlcoholMap& map, AlcoholByVolume alcohol) {
    return std::clamp(map.by_percent * (in(alcohol, percent_by_volume) - map.unnoticed), 0.0, 7.0);
}

double creaminess_level(double body, Concentration grain_body, Concentration lactose, Carbonation carbonation,
                        bool nitrogen) {
    constexpr double from_body = 0.45;
    constexpr double light = 1.5;
    constexpr double per_gram_grain = 0.045;
    constexpr double most_from_grain = 2.2;
    constexpr double per_gram_lactose = 0.06;
    constexpr double nitrogen_gain = 2.0;
    constexpr double lively_from = 2.6;
    constexpr double loss_per_volume = 0.6;
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
    constexpr double hops_free_to = 8.0;
    constexpr double per_gram_hops = 0.15;
    const double from_roast = per_gram_roast * std::max(in(roast, gram_per_liter) - roast_free_to, 0.0);
    const double from_hops = per_gram_hops * std::max(in(dry_hops, gram_per_liter) - hops_free_to, 0.0);
    return std::min(from_roast + from_hops, 7.0);
}

}  // namespace entrywise
