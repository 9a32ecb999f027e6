#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* precursor_breakdown =
    "Dickenson, DMS precursor, Journal of the Institute of Brewing 85, 1979";
inline constexpr const char* precursor_breakdown_again =
    "Wilson & Booer, Journal of the Institute of Brewing 85, 1979";

/// Half-life of the precursor in minutes.
struct PrecursorHalfLife {
    double ph;
    double celsius;
    double minutes;
};

inline constexpr std::array precursor_at_the_boil = {PrecursorHalfLife{5.2, 100.0, 38.0},
                                                     PrecursorHalfLife{5.5, 100.0, 32.5}};
inline constexpr PrecursorHalfLife precursor_by_wilson{5.4, 100.0, 35.0};
inline constexpr PrecursorHalfLife precursor_below_the_boil{5.2, 94.0, 76.0};

/// Shares of the precursor: left by an hour's boil at pH 5.2, and freed by half an hour at 94 °C.
inline constexpr double precursor_left_by_the_boil = 0.335;
inline constexpr double precursor_freed_by_a_stand = 0.24;

}  // namespace entrywise::published
