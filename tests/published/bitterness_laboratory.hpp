#pragma once

namespace entrywise::published {

inline constexpr const char* laboratory_agreement =
    "MEBAK, Collected brewing analysis methods; European Brewery Convention, Analytica 9.8";

/// At 30 IBU, 95 of 100 pairs of results lie within so many IBU of each other.
inline constexpr double reproducibility_at_30_ibu = 4.9;
inline constexpr double repeatability_at_30_ibu = 1.14;
/// That distance over the standard deviation.
inline constexpr double distance_over_deviation = 2.77;

inline constexpr const char* oxidized_acids =
    "Algazzali & Shellhammer, Bitterness intensity of oxidized hop acids, Journal of the American Society of "
    "Brewing Chemists 74, 2016";

/// How bitter humulinones taste beside as much iso-alpha-acids.
inline constexpr double bitterness_of_humulinones = 0.66;

}  // namespace entrywise::published
