#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* steam_tables =
    "IAPWS, Release on the thermodynamic properties of ordinary water substance, 1995, from memory";

/// Grams in a liter at one atmosphere.
struct WaterDensity {
    double celsius;
    double density;
};

inline constexpr std::array water_densities = {WaterDensity{0.0, 999.84},  WaterDensity{3.98, 999.97},
                                               WaterDensity{20.0, 998.21}, WaterDensity{25.0, 997.05},
                                               WaterDensity{50.0, 988.03}, WaterDensity{80.0, 971.79},
                                               WaterDensity{99.97, 958.37}};

}  // namespace entrywise::published
