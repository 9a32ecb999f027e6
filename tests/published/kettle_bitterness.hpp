#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* boils_and_steeps =
    "Hosom, web reports on alpha-acid solubility and hop steeping, 2015..2020";

/// A brew whose bitterness was measured: whole hops of one addition, boiled or steeped, then chilled quickly.
/// IBU by ASBC Beer-23.
struct MeasuredBrew {
    double grams;
    double alpha_percent;
    double minutes;
    double celsius;
    double liters;
    double original_gravity;
    double ibu;
};

/// Alpha of the last two at use was estimated from a label of 13.3 %.
inline constexpr std::array measured_brews = {MeasuredBrew{10.49, 7.70, 12.0, 100.0, 6.21, 1.0545, 12.0},
                                              MeasuredBrew{31.47, 7.70, 12.0, 100.0, 6.13, 1.0550, 29.0},
                                              MeasuredBrew{62.94, 7.70, 12.0, 100.0, 6.09, 1.0555, 47.0},
                                              MeasuredBrew{45.36, 5.75, 10.0, 100.0, 4.47, 1.0658, 33.3},
                                              MeasuredBrew{45.36, 5.75, 10.0, 92.7, 4.54, 1.0645, 28.9},
                                              MeasuredBrew{45.36, 5.75, 10.0, 88.4, 4.66, 1.0645, 30.8},
                                              MeasuredBrew{45.36, 5.75, 10.0, 85.2, 4.69, 1.0641, 25.5},
                                              MeasuredBrew{82.86, 9.00, 20.0, 100.0, 30.65, 1.0496, 27.5},
                                              MeasuredBrew{82.86, 9.00, 60.0, 100.0, 29.94, 1.0507, 48.0}};

}  // namespace entrywise::published
