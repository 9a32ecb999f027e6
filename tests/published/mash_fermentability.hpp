#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* mashes_of_lager_malt =
    "Chandrasekhar's mash data, lager malt, 3 L/kg, quoted elsewhere, year not known";

/// Apparent attenuation of wort after an hour's rest, in percent.
struct MashedWort {
    double celsius;
    double attenuation;
};

inline constexpr std::array mashed_worts = {MashedWort{65.0, 82.0}, MashedWort{70.0, 70.0},
                                            MashedWort{75.0, 50.0}, MashedWort{80.0, 30.0}};

inline constexpr const char* mashes_of_modern_malt = "Terrill, ale strain trial, 2017";

/// Means of three strains at 66.5 to 70 °C span 79 to 86 %; the lowest.
inline constexpr MashedWort modern_malt_mashed_hot{70.0, 79.0};

}  // namespace entrywise::published
