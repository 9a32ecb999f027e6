#pragma once

namespace entrywise::published {

inline constexpr const char* heavy_dry_hop =
    "Maye et al., Humulinone formation and dry hopping, MBAA Technical Quarterly 53, 2016";

/// Pellets for 3 days at 16 °C, and what they left in the beer.
struct MeasuredDryHop {
    double grams_in_liter;
    double alpha_percent;
    double humulinone_percent;
    double humulinones;  ///< mg/L
    double alpha_acids;  ///< mg/L
};

inline constexpr MeasuredDryHop measured_dry_hop{23.2, 5.7, 0.23, 48.0, 35.0};

}  // namespace entrywise::published
