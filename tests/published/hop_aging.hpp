#pragma once

namespace entrywise::published {

inline constexpr const char* hop_storage_index =
    "Nickerson & Likens, Hop storage index, Journal of the American Society of Brewing Chemists 37, 1979";

inline constexpr double storage_index = 0.31;
inline constexpr double percent_lost_at_storage_index = 10.3;

/// The share of bitterness that is left.
inline constexpr const char* aging_of_home_made_beer =
    "Hosom, web report on the aging of bitterness, 2015..2020";
inline constexpr double left_after_16_weeks = 0.77;
inline constexpr const char* aging_of_bottled_beer = "Forster, storage of beer bitterness, 2004";
inline constexpr double left_after_8_months = 0.86;

}  // namespace entrywise::published
