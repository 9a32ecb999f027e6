#include "sensing/grain.hpp"

#include <algorithm>
#include <cmath>

#include "sensing/saturation.hpp"

namespace entrywise {

double malt_richness(Concentration malt, Extract original_extract, SpecificGravity original_gravity,
                     double specialty) {
    // A dry malt gives 80 % of extract, has 4 % of moisture, and 72 % of its extract reaches the fermenter of
    // a usual brewhouse (common practice).
    constexpr double extract_of_a_gram = 0.80 * 0.96 * 0.72;
    constexpr double least_grain = 10.0;
    constexpr double by_level_of_specialty = 0.15;
    const double extract = 10.0 * in(original_extract, plato) * in(original_gravity, specific_gravity);
    return in(malt, gram_per_liter) / std::max(extract / extract_of_a_gram, least_grain) +
           by_level_of_specialty * specialty;
}

double malt_level(const MaltMap& map, Extract real_extract, double richness, double bitterness_ratio,
                  double sour) {
    constexpr double usual_extract = 4.8;
    constexpr double usual_richness = 1.0;
    constexpr double even_ratio = 0.5;
    constexpr double highest_ratio = 1.3;
    constexpr double least_extract = 0.2;
    const double body = std::max(in(real_extract, plato), least_extract) / usual_extract;
    const double level = map.of_usual_beer * std::pow(body, map.by_extract) +
                         map.by_richness * (richness - usual_richness) -
                         map.masked_by_ratio * (std::min(bitterness_ratio, highest_ratio) - even_ratio) -
                         map.masked_by_sour * sour;
    return std::clamp(level, 0.0, 7.0);
}

double roast_level(SaturationCurve curve, Concentration roast) {
    return saturating_level(in(roast, gram_per_liter), curve);
}

double caramel_level(SaturationCurve curve, Concentration caramel) {
    return saturating_level(in(caramel, gram_per_liter), curve);
}

double toast_level(Concentration toast) {
    return saturating_level(in(toast, gram_per_liter), {.half_at = 24.0, .steepness = 1.5});
}

double smoke_level(Concentration smoke) {
    return saturating_level(in(smoke, gram_per_liter), {.half_at = 80.0, .steepness = 1.0});
}

}  // namespace entrywise
