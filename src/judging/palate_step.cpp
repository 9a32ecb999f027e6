#include "judging/palate_step.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

/// About a quarter of the bitterness, and no less than 6 IBU; one percent of alcohol; about a fifth of the
/// color, and no less than 1 SRM (working values).
constexpr double bitterness_step_share = 0.25;
constexpr double color_step_share = 0.2;
constexpr Bitterness least_bitterness_step = 6.0 * ibu;
constexpr AlcoholByVolume alcohol_step = 1.0 * percent_by_volume;
constexpr Color least_color_step = 1.0 * srm;
constexpr SpecificGravity original_gravity_step = 0.008 * specific_gravity;
constexpr SpecificGravity final_gravity_step = 0.004 * specific_gravity;
constexpr SpecificGravity water = 1.0 * specific_gravity;

/// Counts even steps up to where the share takes over, and from there on equal ratios.
double steps_up_to(double amount, double least_step, double share) {
    const double even_up_to = least_step / share;
    return amount <= even_up_to ? amount / least_step : (1.0 + std::log(amount / even_up_to)) / share;
}

}  // namespace

Bitterness palate_step(Bitterness limit) {
    return std::max(least_bitterness_step, bitterness_step_share * limit);
}

AlcoholByVolume palate_step(AlcoholByVolume /*limit*/) {
    return alcohol_step;
}

Color palate_step(Color limit) {
    return std::max(least_color_step, color_step_share * limit);
}

double palate_steps_of_original_gravity(SpecificGravity original_gravity) {
    return (original_gravity - water) / original_gravity_step;
}

double palate_steps_of_final_gravity(SpecificGravity final_gravity) {
    return (final_gravity - water) / final_gravity_step;
}

double palate_steps(AlcoholByVolume alcohol) {
    return alcohol / alcohol_step;
}

double palate_steps(Bitterness bitterness) {
    return steps_up_to(in(bitterness, ibu), in(least_bitterness_step, ibu), bitterness_step_share);
}

double palate_steps(Color color) {
    return steps_up_to(in(std::min(color, black_from), srm), in(least_color_step, srm), color_step_share);
}

}  // namespace entrywise
