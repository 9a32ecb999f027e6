#pragma once

#include <boost/units/quantity.hpp>

#include "quantity/quantities.hpp"

namespace entrywise {

/// Color that malts bring to the wort, the sum of concentration times color of each: in malt color units,
/// pounds times degrees Lovibond in a US gallon.
using ColorLoad = boost::units::multiply_typeof_helper<Concentration, MaltColor>::type;
inline constexpr ColorLoad malt_color_unit = ColorLoad(lovibond * (pound / gallon));

// Color of beer from the color load of its grist. Browning in kettle and fining make beer no sum of its
// malts. Error of all: 20 % to 15 SRM and 35 % above (working value); beers heavy in roast malt come out low.

/// A smooth curve through the three below. Valid to 50 SRM. Source: Morey, Hop and malt color in the beer,
/// web note, 1995.
Color morey_color(ColorLoad load);
/// The load of which `morey_color` makes this color.
ColorLoad morey_load(Color color);
/// Valid above 11 units. Source: Daniels, Designing great beers, 1996.
Color daniels_color(ColorLoad load);
/// Valid above 7 units. Source: Mosher, The brewer's companion, 1994.
Color mosher_color(ColorLoad load);
/// Valid below 10 units. Source: common practice.
Color linear_color(ColorLoad load);

/// What a malt adds to the color of unboiled wort, which absorbs in proportion (Beer's law): the colors of
/// all malts add. Never below zero. Source: the definition of malt color, of a congress wort of one pound a
/// gallon.
Color wort_color(Concentration malt, MaltColor color);

/// European Brewery Convention units of a beer's color, and back: 25 over 12.7 times the absorbance at 430
/// nm. Source: American Society of Brewing Chemists, Methods of Analysis, Beer-10; European Brewery
/// Convention, Analytica, 9.6.
double in_ebc(Color color);
Color ebc(double units);

/// Color of a laboratory wort of a malt in SRM. The degree Lovibond is a visual scale, so that the two
/// differ. Valid above 1 °L. Source: common practice of maltsters' certificates.
Color color_of(MaltColor color);

/// European Brewery Convention units of a malt's color. Source as for `color_of` and `in_ebc`.
double in_ebc(MaltColor color);

}  // namespace entrywise
