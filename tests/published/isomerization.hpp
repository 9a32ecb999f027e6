#pragma once

namespace entrywise::published {

inline constexpr const char* hop_acid_kinetics =
    "Malowicki & Shellhammer, Isomerization and degradation kinetics of hop acids, Journal of Agricultural "
    "and Food Chemistry 53, 2005";

/// At 100 °C.
inline constexpr double isomerization_per_minute = 0.01249;
inline constexpr double half_life_of_alpha_acids_minutes = 55.5;
inline constexpr double isomerized_in_half_an_hour = 0.2976;

/// Activation energy between 90 and 130 °C, in kJ/mol.
inline constexpr double energy_of_isomerization = 98.6;
inline constexpr double energy_of_degradation = 108.0;

}  // namespace entrywise::published
