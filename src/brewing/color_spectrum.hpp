#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/length.hpp>

#include <cstdint>

#include "quantity/quantities.hpp"

namespace entrywise {

/// How far light goes through the beer: 0.05 m for a tasting glass. Color depends on this times the SRM only.
using PathLength = boost::units::quantity<boost::units::si::length>;
inline constexpr PathLength centimeter = PathLength::from_value(0.01);
inline constexpr PathLength nanometer = PathLength::from_value(1e-9);

/// Share of light of a wavelength (380..780 nm) that clear beer of average hue lets through.
/// The SRM carries 92 % of what differs between spectra; red, fruit and hazy beers differ most.
/// Source: de Lange, Color, in: Bamforth (editor), Brewing materials and processes, 2016.
double transmission(Color color, PathLength path, PathLength wavelength);

/// Tristimulus values under the standard illuminant D65 for the observer of 2 degrees; a perfect window has y
/// = 100.
struct Tristimulus {
    double x;
    double y;
    double z;
};

/// CIE 1976 L*a*b* against the white of D65. A difference of about 2.3 is just noticeable (Mahy, Van Eycken &
/// Oosterlinck, Evaluation of uniform color spaces, Color Research and Application 19, 1994).
struct LabColor {
    double lightness;
    double a;
    double b;
};

/// Color for a screen; hues that no screen shows are clipped. Source: IEC 61966-2-1, 1999.
struct ScreenColor {
    std::uint8_t red;
    std::uint8_t green;
    std::uint8_t blue;
};

/// The sum over 380..780 nm by 5 nm. Error against other beers of the same SRM about 4 units of L*a*b*.
/// Source: CIE 15, Colorimetry, 2004; ISO 11664-1 and 11664-2, 2007.
Tristimulus tristimulus(Color color, PathLength path);

LabColor lab_color(const Tristimulus& light);
ScreenColor screen_color(const Tristimulus& light);

}  // namespace entrywise
