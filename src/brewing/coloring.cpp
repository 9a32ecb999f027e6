#include "brewing/coloring.hpp"

#include <array>
#include <cmath>
#include <vector>

#include "base/piecewise.hpp"
#include "brewing/color.hpp"
#include "brewing/measured.hpp"
#include "brewing/tracing.hpp"

namespace entrywise {

namespace {

Part<ColorLoad> load_of(const GristAddition& addition, const Wort& wort, Deviates& deviates) {
    const Fermentable& fermentable = addition.fermentable;
    const MaltColor black = 1000.0 * lovibond;
    const auto color =
        deviates.draw("color of " + fermentable.name, fermentable.color, 0.0 * lovibond, black);
    const Mass mass = addition.mass;
    const auto load = [mass](MaltColor malt, Volume volume) -> ColorLoad { return mass / volume * malt; };
    return {fermentable.name, addition.position, lift(load, color, wort.volume)};
}

/// The curve's error grows from pale to dark beer.
Color with_curve_error(ColorLoad load, double deviate) {
    constexpr std::array<Corner, 2> deviation{{{10.0, 0.20}, {25.0, 0.30}}};
    const Color color = morey_color(load);
    return color * std::exp(on_line_through(deviation, in(color, srm)) * deviate);
}

}  // namespace

Traced<Color> coloring(const Process& process, const Wort& wort, const Measured& measured,
                       Deviates& deviates) {
    std::vector<Part<ColorLoad>> loads;
    for (const GristAddition& addition : process.grist) {
        loads.push_back(load_of(addition, wort, deviates));
    }
    if (measured.color) {
        return {draw_measured("measured color", *measured.color, deviates), shares_of(loads)};
    }
    const Estimate<double> curve(deviates.of("color curve"));
    return {lift(with_curve_error, sum_of(loads, deviates.draws()), curve), shares_of(loads)};
}

}  // namespace entrywise
