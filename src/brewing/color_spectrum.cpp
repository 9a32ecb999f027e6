#include "brewing/color_spectrum.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "brewing/standard_observer.hpp"

namespace entrywise {

namespace {

/// Absorbance relative to that at 430 nm. The sum of two exponentials is the average of many beers.
double relative_absorbance(double nanometers) {
    const double beyond = nanometers - 430.0;
    return 0.02465 * std::exp(-beyond / 17.591) + 0.97535 * std::exp(-beyond / 82.122);
}

/// SRM over absorbance in one centimeter (American Society of Brewing Chemists, Methods of Analysis,
/// Beer-10).
constexpr double srm_of_absorbance = 12.7;

/// The absorbances of the bands, the same for every beer.
const std::array<double, observer_bands.size()>& band_absorbances() {
    static const std::array<double, observer_bands.size()> absorbances = [] {
        std::array<double, observer_bands.size()> values{};
        std::transform(observer_bands.begin(), observer_bands.end(), values.begin(),
                       [](const ObserverBand& band) { return relative_absorbance(band.nanometers); });
        return values;
    }();
    return absorbances;
}

Tristimulus weighted_sum(const std::array<double, observer_bands.size()>& transmissions) {
    Tristimulus sum{};
    double white = 0.0;
    for (std::size_t index = 0; index < observer_bands.size(); ++index) {
        const ObserverBand& band = observer_bands[index];
        const double light = band.daylight * transmissions[index];
        sum.x += band.x * light;
        sum.y += band.y * light;
        sum.z += band.z * light;
        white += band.y * band.daylight;
    }
    return {100.0 * sum.x / white, 100.0 * sum.y / white, 100.0 * sum.z / white};
}

double absorbance_at_430(Color color, PathLength path) {
    return color.value() / srm_of_absorbance * in(path, centimeter);
}

double lab_compressed(double ratio) {
    constexpr double knee = 216.0 / 24389.0;
    return ratio > knee ? std::cbrt(ratio) : (24389.0 / 27.0 * ratio + 16.0) / 116.0;
}

std::uint8_t screen_level(double linear) {
    const double clipped = std::clamp(linear, 0.0, 1.0);
    const double level =
        clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * std::pow(clipped, 1.0 / 2.4) - 0.055;
    return static_cast<std::uint8_t>(std::lround(255.0 * level));
}

}  // namespace

double transmission(Color color, PathLength path, PathLength wavelength) {
    return std::pow(10.0, -absorbance_at_430(color, path) * relative_absorbance(in(wavelength, nanometer)));
}

Tristimulus tristimulus(Color color, PathLength path) {
    const double absorbance = absorbance_at_430(color, path);
    std::array<double, observer_bands.size()> transmissions{};
    std::transform(band_absorbances().begin(), band_absorbances().end(), transmissions.begin(),
                   [absorbance](double relative) { return std::pow(10.0, -absorbance * relative); });
    return weighted_sum(transmissions);
}

LabColor lab_color(const Tristimulus& light) {
    constexpr Tristimulus white{95.04, 100.0, 108.88};
    const double x = lab_compressed(light.x / white.x);
    const double y = lab_compressed(light.y / white.y);
    const double z = lab_compressed(light.z / white.z);
    return {116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)};
}

ScreenColor screen_color(const Tristimulus& light) {
    const double x = light.x / 100.0;
    const double y = light.y / 100.0;
    const double z = light.z / 100.0;
    return {screen_level(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
            screen_level(-0.9692660 * x + 1.8760108 * y + 0.0415560 * z),
            screen_level(0.0556434 * x - 0.2040259 * y + 1.0572252 * z)};
}

}  // namespace entrywise
