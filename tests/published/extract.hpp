#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* sucrose_tables =
    "Bates et al., Polarimetry, saccharimetry and the sugars, NBS Circular C440, 1942";

/// Degrees Plato and the apparent specific gravity at 20/20 °C that belongs to them.
struct SucroseSolution {
    double plato;
    double gravity;
};

/// From memory.
inline constexpr std::array sucrose_solutions = {SucroseSolution{10.0, 1.04003},
                                                 SucroseSolution{20.0, 1.08297}};

inline constexpr SucroseSolution weak_wort{9.993, 1.040};
inline constexpr SucroseSolution usual_wort{12.0, 1.0484};
inline constexpr SucroseSolution strong_wort{23.77, 1.100};

struct SucroseInLiter {
    double grams;
    double gravity;
};

/// At 20 °C: 5, 10, 12 and 20 g in 100 g of solution. From memory.
inline constexpr std::array sucrose_in_liter = {
    SucroseInLiter{50.89, 1.01965}, SucroseInLiter{103.81, 1.04003}, SucroseInLiter{125.58, 1.04838},
    SucroseInLiter{216.20, 1.08287}};

}  // namespace entrywise::published
