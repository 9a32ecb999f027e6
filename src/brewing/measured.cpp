#include "brewing/measured.hpp"

#include "brewing/bitterness_laboratory.hpp"

namespace entrywise {

namespace {

template <class Quantity>
Estimate<Quantity> draw_with(const std::string& input, const Uncertain<Quantity>& measured,
                             Quantity usual_half_width, Quantity lowest, Quantity highest,
                             Deviates& deviates) {
    const bool states_spread = measured.half_width > Quantity();
    const Quantity half_width = states_spread ? measured.half_width : usual_half_width;
    return deviates.draw(input, {measured.middle, half_width}, lowest, highest);
}

}  // namespace

Estimate<SpecificGravity> draw_measured(const std::string& input, const Uncertain<SpecificGravity>& measured,
                                        Deviates& deviates) {
    return draw_with(input, measured, 0.001 * specific_gravity, 0.985 * specific_gravity,
                     1.25 * specific_gravity, deviates);
}

Estimate<AlcoholByVolume> draw_measured(const std::string& input, const Uncertain<AlcoholByVolume>& measured,
                                        Deviates& deviates) {
    return draw_with(input, measured, 0.2 * percent_by_volume, 0.0 * percent_by_volume,
                     30.0 * percent_by_volume, deviates);
}

Estimate<Bitterness> draw_measured(const std::string& input, const Uncertain<Bitterness>& measured,
                                   Deviates& deviates) {
    const Bitterness half_width = Deviates::eight_in_ten * laboratory_reproducibility(measured.middle);
    return draw_with(input, measured, half_width, 0.0 * ibu, 500.0 * ibu, deviates);
}

Estimate<Color> draw_measured(const std::string& input, const Uncertain<Color>& measured,
                              Deviates& deviates) {
    return draw_with(input, measured, 0.05 * measured.middle, 0.5 * srm, 300.0 * srm, deviates);
}

Estimate<Carbonation> draw_measured(const std::string& input, const Uncertain<Carbonation>& measured,
                                    Deviates& deviates) {
    return draw_with(input, measured, 0.15 * volume_of_co2, 0.0 * volume_of_co2, 8.0 * volume_of_co2,
                     deviates);
}

}  // namespace entrywise
