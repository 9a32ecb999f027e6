#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* alcoholometric_tables =
    "OIML Recommendation 22, International alcoholometric tables, 1975";

/// Percent by volume and by mass, and grams in a liter at 20 °C.
struct EthanolMixture {
    double by_volume;
    double by_mass;
    double density;
};

/// Tables of density and of mass by volume, from memory.
inline constexpr std::array ethanol_mixtures = {EthanolMixture{40.0, 33.30, 948.05},
                                                EthanolMixture{50.0, 42.43, 930.14},
                                                EthanolMixture{96.0, 93.84, 807.42}};

inline constexpr double density_of_five_percent_by_volume = 991.055;

}  // namespace entrywise::published
