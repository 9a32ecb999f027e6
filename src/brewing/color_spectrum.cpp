#include "brewing/color_spectrum.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace entrywise {

namespace {

/// The color-matching functions of the CIE 1931 observer and the power of the illuminant D65, as CIE 15
/// (2004) and ISO 11664-1 and 11664-2 (2007) tabulate them.
struct Band {
    int nanometers;
    double x;
    double y;
    double z;
    double daylight;
};

constexpr std::array<Band, 81> bands = {{
    {380, 0.001368, 3.9e-05, 0.00645, 49.9755}, {385, 0.002236, 6.4e-05, 0.01055, 52.3118},
    {390, 0.004243, 0.00012, 0.02005, 54.6482}, {395, 0.00765, 0.000217, 0.03621, 68.7015},
    {400, 0.01431, 0.000396, 0.06785, 82.7549}, {405, 0.02319, 0.00064, 0.1102, 87.1204},
    {410, 0.04351, 0.00121, 0.2074, 91.486},    {415, 0.07763, 0.00218, 0.3713, 92.4589},
    {420, 0.13438, 0.004, 0.6456, 93.4318},     {425, 0.21477, 0.0073, 1.03905, 90.057},
    {430, 0.2839, 0.0116, 1.3856, 86.6823},     {435, 0.3285, 0.01684, 1.62296, 95.7736},
    {440, 0.34828, 0.023, 1.74706, 104.865},    {445, 0.34806, 0.0298, 1.7826, 110.936},
    {450, 0.3362, 0.038, 1.77211, 117.008},     {455, 0.3187, 0.048, 1.7441, 117.41},
    {460, 0.2908, 0.06, 1.6692, 117.812},       {465, 0.2511, 0.0739, 1.5281, 116.336},
    {470, 0.19536, 0.09098, 1.28764, 114.861},  {475, 0.1421, 0.1126, 1.0419, 115.392},
    {480, 0.09564, 0.13902, 0.81295, 115.923},  {485, 0.05795, 0.1693, 0.6162, 112.367},
    {490, 0.03201, 0.20802, 0.46518, 108.811},  {495, 0.0147, 0.2586, 0.3533, 109.082},
    {500, 0.0049, 0.323, 0.272, 109.354},       {505, 0.0024, 0.4073, 0.2123, 108.578},
    {510, 0.0093, 0.503, 0.1582, 107.802},      {515, 0.0291, 0.6082, 0.1117, 106.296},
    {520, 0.06327, 0.71, 0.07825, 104.79},      {525, 0.1096, 0.7932, 0.05725, 106.239},
    {530, 0.1655, 0.862, 0.04216, 107.689},     {535, 0.22575, 0.91485, 0.02984, 106.047},
    {540, 0.2904, 0.954, 0.0203, 104.405},      {545, 0.3597, 0.9803, 0.0134, 104.225},
    {550, 0.43345, 0.99495, 0.00875, 104.046},  {555, 0.51205, 1, 0.00575, 102.023},
    {560, 0.5945, 0.995, 0.0039, 100},          {565, 0.6784, 0.9786, 0.00275, 98.1671},
    {570, 0.7621, 0.952, 0.0021, 96.3342},      {575, 0.8425, 0.9154, 0.0018, 96.0611},
    {580, 0.9163, 0.87, 0.00165, 95.788},       {585, 0.9786, 0.8163, 0.0014, 92.2368},
    {590, 1.0263, 0.757, 0.0011, 88.6856},      {595, 1.0567, 0.6949, 0.001, 89.3459},
    {600, 1.0622, 0.631, 0.0008, 90.0062},      {605, 1.0456, 0.5668, 0.0006, 89.8026},
    {610, 1.0026, 0.503, 0.00034, 89.5991},     {615, 0.9384, 0.4412, 0.00024, 88.6489},
    {620, 0.85445, 0.381, 0.00019, 87.6987},    {625, 0.7514, 0.321, 0.0001, 85.4936},
    {630, 0.6424, 0.265, 5e-05, 83.2886},       {635, 0.5419, 0.217, 3e-05, 83.4939},
    {640, 0.4479, 0.175, 2e-05, 83.6992},       {645, 0.3608, 0.1382, 1e-05, 81.863},
    {650, 0.2835, 0.107, 0, 80.0268},           {655, 0.2187, 0.0816, 0, 80.1207},
    {660, 0.1649, 0.061, 0, 80.2146},           {665, 0.1212, 0.04458, 0, 81.2462},
    {670, 0.0874, 0.032, 0, 82.2778},           {675, 0.0636, 0.0232, 0, 80.281},
    {680, 0.04677, 0.017, 0, 78.2842},          {685, 0.0329, 0.01192, 0, 74.0027},
    {690, 0.0227, 0.00821, 0, 69.7213},         {695, 0.01584, 0.005723, 0, 70.6652},
    {700, 0.011359, 0.004102, 0, 71.6091},      {705, 0.008111, 0.002929, 0, 72.979},
    {710, 0.00579, 0.002091, 0, 74.349},        {715, 0.004109, 0.001484, 0, 67.9765},
    {720, 0.002899, 0.001047, 0, 61.604},       {725, 0.002049, 0.00074, 0, 65.7448},
    {730, 0.00144, 0.00052, 0, 69.8856},        {735, 0.001, 0.000361, 0, 72.4863},
    {740, 0.00069, 0.000249, 0, 75.087},        {745, 0.000476, 0.000172, 0, 69.3398},
    {750, 0.000332, 0.00012, 0, 63.5927},       {755, 0.000235, 8.5e-05, 0, 55.0054},
    {760, 0.000166, 6e-05, 0, 46.4182},         {765, 0.000117, 4.2e-05, 0, 56.6118},
    {770, 8.3e-05, 3e-05, 0, 66.8054},          {775, 5.9e-05, 2.1e-05, 0, 65.0941},
    {780, 4.2e-05, 1.5e-05, 0, 63.3828},
}};

/// Absorbance relative to that at 430 nm. The sum of two exponentials is the average of many beers.
double relative_absorbance(double nanometers) {
    const double beyond = nanometers - 430.0;
    return 0.02465 * std::exp(-beyond / 17.591) + 0.97535 * std::exp(-beyond / 82.122);
}

/// SRM over absorbance in one centimeter (American Society of Brewing Chemists, Methods of Analysis,
/// Beer-10).
constexpr double srm_of_absorbance = 12.7;

/// The absorbances of the bands, the same for every beer.
const std::array<double, bands.size()>& band_absorbances() {
    static const std::array<double, bands.size()> absorbances = [] {
        std::array<double, bands.size()> values{};
        std::transform(bands.begin(), bands.end(), values.begin(),
                       [](const Band& band) { return relative_absorbance(band.nanometers); });
        return values;
    }();
    return absorbances;
}

constexpr Tristimulus weighted_sum(const std::array<double, bands.size()>& transmissions) {
    Tristimulus sum{};
    double white = 0.0;
    for (std::size_t index = 0; index < bands.size(); ++index) {
        const Band& band = bands[index];
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
    std::array<double, bands.size()> transmissions{};
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
