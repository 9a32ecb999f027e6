#include "sensing/bitterness.hpp"

#include <algorithm>
#include <array>

#include "base/piecewise.hpp"

namespace entrywise {

double bitterness_level(Bitterness bitterness, AlcoholByVolume alcohol, Extract real_extract,
                        Concentration roast) {
    constexpr double level_at_saturation = 9.8;
    constexpr double half_saturation_ibu = 45.0;
    constexpr double gain_per_percent_alcohol = 0.03;
    constexpr double usual_alcohol = 5.0;
    constexpr double loss_per_plato = 0.25;
    constexpr double usual_real_extract = 4.2;
    constexpr double gain_per_gram_roast = 0.02;
    const double ibus = std::max(in(bitterness, ibu), 0.0);
    const double bare = level_at_saturation * ibus / (ibus + half_saturation_ibu);
    const double with_alcohol =
        bare * (1.0 + gain_per_percent_alcohol * (in(alcohol, percent_by_volume) - usual_alcohol));
    const double sweetened = loss_per_plato * std::max(in(real_extract, plato) - usual_real_extract, 0.0);
    const double roasted = gain_per_gram_roast * in(roast, gram_per_liter);
    return std::clamp(with_alcohol - sweetened + roasted, 0.0, 7.0);
}

double balance_level(Bitterness bitterness, SpecificGravity original_gravity,
                     Attenuation apparent_attenuation) {
    constexpr std::array<Corner, 7> steps{
        {{0.0, 0.0}, {0.3, 1.0}, {0.4, 2.0}, {0.5, 3.0}, {0.7, 4.0}, {0.95, 5.0}, {1.3, 6.0}}};
    constexpr double usual_attenuation = 0.7655;
    constexpr double fewest_points = 10.0;
    const double points = std::max(1000.0 * (in(original_gravity, specific_gravity) - 1.0), fewest_points);
    const double correction = 1.0 + in(apparent_attenuation, fully_attenuated) - usual_attenuation;
    return on_line_through(steps, in(bitterness, ibu) / points * correction);
}

}  // namespace entrywise
