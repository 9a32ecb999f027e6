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

inline constexpr const char* handbook_of_chemical_engineering =
    "Perry, Chemical Engineers' Handbook, densities of aqueous ethyl alcohol";

inline constexpr std::array degrees_of_ethanol_table = {10.0, 15.0, 20.0, 25.0, 30.0};

/// Of water at 4 °C, in grams in a liter.
inline constexpr double most_density_of_water = 999.97;

/// Densities over that of water at 4 °C, for the degrees above.
struct EthanolDensities {
    double percent_by_mass;
    std::array<double, 5> relative;
};

/// From memory.
inline constexpr std::array ethanol_densities = {
    EthanolDensities{5.0, {0.99098, 0.99032, 0.98938, 0.98817, 0.98670}},
    EthanolDensities{10.0, {0.98393, 0.98304, 0.98187, 0.98043, 0.97875}},
    EthanolDensities{20.0, {0.97252, 0.97068, 0.96864, 0.96639, 0.96395}},
    EthanolDensities{30.0, {0.95977, 0.95686, 0.95382, 0.95067, 0.94741}},
    EthanolDensities{40.0, {0.94238, 0.93882, 0.93518, 0.93148, 0.92770}},
    EthanolDensities{50.0, {0.92162, 0.91776, 0.91384, 0.90985, 0.90580}},
    EthanolDensities{60.0, {0.89927, 0.89523, 0.89113, 0.88699, 0.88278}},
    EthanolDensities{70.0, {0.87602, 0.87187, 0.86766, 0.86340, 0.85908}},
    EthanolDensities{80.0, {0.85197, 0.84772, 0.84344, 0.83911, 0.83473}},
    EthanolDensities{90.0, {0.82654, 0.82227, 0.81797, 0.81362, 0.80922}},
    EthanolDensities{100.0, {0.79784, 0.79360, 0.78934, 0.78506, 0.78075}}};

inline constexpr double density_of_five_percent_by_volume = 991.055;

}  // namespace entrywise::published
