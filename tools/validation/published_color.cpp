#include <fmt/format.h>

#include <string>

#include "brewing/color.hpp"
#include "brewing/color_spectrum.hpp"
#include "tests/published/color.hpp"
#include "tools/validation/published_quantities.hpp"

namespace entrywise {

using namespace entrywise::published;

namespace {

Quantity color_by(const std::string& whose, const char* source, Color (*formula)(ColorLoad),
                  const ColorOfLoad& of) {
    return {"Beer color by " + whose,
            "SRM",
            2,
            Evidence::own_formula,
            source,
            {{fmt::format("{:.0f} malt color units", of.malt_color_units),
              of.srm,
              formula(of.malt_color_units * malt_color_unit).value(),
              {}}}};
}

}  // namespace

Quantity color_in_two_units() {
    return {"Beer color, SRM to EBC", "EBC",       2,
            Evidence::own_formula,    color_units, {{"8 SRM", color_in_ebc, in_ebc(color_in_srm * srm), {}}}};
}

Quantity color_by_formula_of_morey() {
    return color_by("Morey", morey, morey_color, color_by_morey);
}

Quantity color_by_formula_of_daniels() {
    return color_by("Daniels", daniels, daniels_color, color_by_daniels);
}

Quantity color_by_formula_of_mosher() {
    return color_by("Mosher", mosher, mosher_color, color_by_mosher);
}

Quantity light() {
    const LabColor lab = lab_color(tristimulus(10.0 * srm, 1.0 * centimeter));
    const LightThroughBeer& beer = light_through_amber_beer;
    return {
        "Light through beer of 10 SRM, 1 cm",
        "",
        2,
        Evidence::own_formula,
        color_of_light,
        {{"L*", beer.lightness, lab.lightness, {}}, {"a*", beer.a, lab.a, {}}, {"b*", beer.b, lab.b, {}}}};
}

Quantity light_on_a_screen() {
    const ScreenColor screen = screen_color(tristimulus(10.0 * srm, 1.0 * centimeter));
    const LightThroughBeer& beer = light_through_amber_beer;
    return {"The same light on a screen, of 255",
            "",
            0,
            Evidence::own_formula,
            color_of_light,
            {{"red", beer.red, static_cast<double>(screen.red), {}},
             {"green", beer.green, static_cast<double>(screen.green), {}},
             {"blue", beer.blue, static_cast<double>(screen.blue), {}}}};
}

}  // namespace entrywise
