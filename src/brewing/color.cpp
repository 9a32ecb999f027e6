#include "brewing/color.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

namespace {

double malt_color_units(ColorLoad load) {
    return in(load, malt_color_unit);
}

constexpr double morey_factor = 1.4922;
constexpr double morey_power = 0.6859;

}  // namespace

Color morey_color(ColorLoad load) {
    return morey_factor * std::pow(malt_color_units(load), morey_power) * srm;
}

ColorLoad morey_load(Color color) {
    return std::pow(in(color, srm) / morey_factor, 1.0 / morey_power) * malt_color_unit;
}

Color daniels_color(ColorLoad load) {
    return (0.2 * malt_color_units(load) + 8.4) * srm;
}

Color mosher_color(ColorLoad load) {
    return (0.3 * malt_color_units(load) + 4.7) * srm;
}

Color linear_color(ColorLoad load) {
    return malt_color_units(load) * srm;
}

Color wort_color(Concentration malt, MaltColor color) {
    return std::max(Color(), color_of(color)) * (malt / (pound / gallon));
}

double in_ebc(Color color) {
    return 25.0 / 12.7 * color.value();
}

Color ebc(double units) {
    return 12.7 / 25.0 * units * srm;
}

Color color_of(MaltColor color) {
    return (1.3546 * color.value() - 0.76) * srm;
}

double in_ebc(MaltColor color) {
    return in_ebc(color_of(color));
}

}  // namespace entrywise
