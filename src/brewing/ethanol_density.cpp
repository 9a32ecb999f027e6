#include "brewing/ethanol_density.hpp"

#include <array>
#include <span>

namespace entrywise {

namespace {

constexpr std::array by_mass = {9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3,
                                1.352215441e4, -8.829278388e4, 3.062874042e5, -6.138381234e5,
                                7.470172998e5, -5.478461354e5, 2.234460334e5, -3.903285426e4};
constexpr std::array by_temperature = {0.0,           -2.0618513e-1, -5.2682542e-3, 3.6130013e-5,
                                       -3.8957702e-7, 7.1693540e-9,  -9.9739231e-11};
constexpr std::array jointly_1 = {0.0,
                                  1.693443461530087e-1,
                                  -1.046914743455169e1,
                                  7.196353469546523e1,
                                  -7.047478054272792e2,
                                  3.924090430035045e3,
                                  -1.210164659068747e4,
                                  2.248646550400788e4,
                                  -2.605562982188164e4,
                                  1.852373922069467e4,
                                  -7.420201433430137e3,
                                  1.285617841998974e3};
constexpr std::array jointly_2 = {0.0,
                                  -1.193013005057010e-2,
                                  2.517399633803461e-1,
                                  -2.170575700536993,
                                  1.353034988843029e1,
                                  -5.029988758547014e1,
                                  1.096355666577570e2,
                                  -1.422753946421155e2,
                                  1.080435942856230e2,
                                  -4.414153236817392e1,
                                  7.442971530188783};
constexpr std::array jointly_3 = {0.0,
                                  -6.802995733503803e-4,
                                  1.876837790289664e-2,
                                  -2.002561813734156e-1,
                                  1.022992966719220,
                                  -2.895696483903638,
                                  4.810060584300675,
                                  -4.672147440794683,
                                  2.458043105903461,
                                  -5.411227621436812e-1};
constexpr std::array jointly_4 = {0.0, 4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6,
                                  -1.515784836987210e-6};
constexpr std::array jointly_5 = {0.0, -2.788074354782409e-8, 1.345612883493354e-8};

double polynomial(std::span<const double> coefficients, double variable) {
    double sum = 0.0;
    for (std::size_t power = coefficients.size(); power-- > 0;) {
        sum = sum * variable + coefficients[power];
    }
    return sum;
}

}  // namespace

Concentration ethanol_mixture_density(Share ethanol_by_mass, Temperature temperature) {
    const double mass = ethanol_by_mass.value();
    const double warmth = in_celsius(temperature) - 20.0;
    const std::array jointly = {0.0,
                                polynomial(jointly_1, mass),
                                polynomial(jointly_2, mass),
                                polynomial(jointly_3, mass),
                                polynomial(jointly_4, mass),
                                polynomial(jointly_5, mass)};
    const double density =
        polynomial(by_mass, mass) + polynomial(by_temperature, warmth) + polynomial(jointly, warmth);
    return density * gram_per_liter;
}

AlcoholByVolume ethanol_by_volume(Share ethanol_by_mass) {
    const double density_ratio =
        ethanol_mixture_density(ethanol_by_mass, celsius(20.0)) / ethanol_density_at_20_celsius;
    return 100.0 * ethanol_by_mass.value() * density_ratio * percent_by_volume;
}

Share ethanol_by_mass(AlcoholByVolume by_volume) {
    double low = 0.0;
    double high = 1.0;
    while (high - low > 1e-10) {
        const double middle = 0.5 * (low + high);
        (ethanol_by_volume(middle * whole) < by_volume ? low : high) = middle;
    }
    return 0.5 * (low + high) * whole;
}

}  // namespace entrywise
