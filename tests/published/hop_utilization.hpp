#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* tinseth = "Tinseth, Hop utilization, web article, 1997";

/// A share of the alpha acids.
struct TinsethUtilization {
    double minutes;
    double gravity;
    double share;
};

inline constexpr std::array tinseth_table = {
    TinsethUtilization{60.0, 1.050, 0.231}, TinsethUtilization{15.0, 1.060, 0.105},
    TinsethUtilization{30.0, 1.057, 0.166}, TinsethUtilization{5.0, 1.040, 0.050},
    TinsethUtilization{10.0, 1.050, 0.084}, TinsethUtilization{20.0, 1.040, 0.153},
    TinsethUtilization{30.0, 1.050, 0.177}, TinsethUtilization{45.0, 1.040, 0.232},
    TinsethUtilization{60.0, 1.030, 0.276}, TinsethUtilization{60.0, 1.070, 0.193},
    TinsethUtilization{60.0, 1.100, 0.147}, TinsethUtilization{90.0, 1.050, 0.247}};

/// In percent of the alpha acids.
struct TableUtilization {
    double minutes;
    double percent;
};

inline constexpr const char* rager =
    "Rager, Calculating hop bitterness in beer, Zymurgy special issue, 1990, from memory";

/// At the middles of the ranges of time.
inline constexpr std::array rager_table = {
    TableUtilization{0.0, 5.0},   TableUtilization{8.0, 6.0},   TableUtilization{13.0, 8.0},
    TableUtilization{18.0, 10.1}, TableUtilization{23.0, 12.1}, TableUtilization{28.0, 15.3},
    TableUtilization{33.0, 18.8}, TableUtilization{38.0, 22.8}, TableUtilization{43.0, 26.9},
    TableUtilization{48.0, 28.1}, TableUtilization{55.0, 30.0}};

inline constexpr const char* garetz = "Garetz, Using hops, 1994, from memory";

/// Average yeast; between rows a straight line.
inline constexpr std::array garetz_table = {
    TableUtilization{0.0, 0.0},   TableUtilization{10.0, 0.0},  TableUtilization{15.0, 2.0},
    TableUtilization{18.0, 3.8},  TableUtilization{20.0, 5.0},  TableUtilization{25.0, 8.0},
    TableUtilization{30.0, 11.0}, TableUtilization{35.0, 14.0}, TableUtilization{40.0, 16.0},
    TableUtilization{45.0, 18.0}, TableUtilization{50.0, 19.0}, TableUtilization{60.0, 20.0},
    TableUtilization{70.0, 21.0}, TableUtilization{80.0, 22.0}, TableUtilization{90.0, 23.0}};

}  // namespace entrywise::published
