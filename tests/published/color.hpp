#pragma once

namespace entrywise::published {

inline constexpr const char* color_units =
    "American Society of Brewing Chemists, Methods of Analysis, Beer-10; European Brewery Convention, "
    "Analytica, 9.6";

/// Beer color in both units.
inline constexpr double color_in_srm = 8.0;
inline constexpr double color_in_ebc = 15.8;

inline constexpr const char* morey = "Morey, Hop and malt color in the beer, web note, 1995";
inline constexpr const char* daniels = "Daniels, Designing great beers, 1996";
inline constexpr const char* mosher = "Mosher, The brewer's companion, 1994";

/// SRM of beer from malt color units, by a formula of its author.
struct ColorOfLoad {
    double malt_color_units;
    double srm;
};

inline constexpr ColorOfLoad color_by_morey{20.0, 11.65};
inline constexpr ColorOfLoad color_by_daniels{30.0, 14.4};
inline constexpr ColorOfLoad color_by_mosher{30.0, 13.7};

inline constexpr const char* color_of_light =
    "De Lange, Color, in: Bamforth (editor), Brewing materials and processes, 2016";

/// The light of D65 through beer of 10 SRM, 1 cm thick, as CIE L*a*b* and as a screen shows it.
struct LightThroughBeer {
    double lightness;
    double a;
    double b;
    double red;
    double green;
    double blue;
};

inline constexpr LightThroughBeer light_through_amber_beer{85.33, 1.90, 44.88, 244.0, 209.0, 128.0};

}  // namespace entrywise::published
