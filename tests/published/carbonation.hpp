#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* carbonation_chart =
    "American Society of Brewing Chemists, chart of carbon dioxide in beer; all but the first from memory";

/// Volumes of carbon dioxide in beer under gauge pressure.
struct KegCarbonation {
    double fahrenheit;
    double psi;
    double volumes;
};

inline constexpr std::array keg_carbonations = {
    KegCarbonation{38.0, 12.0, 2.57}, KegCarbonation{38.0, 10.0, 2.39}, KegCarbonation{40.0, 12.0, 2.47},
    KegCarbonation{40.0, 10.0, 2.30}};

inline constexpr const char* priming_tables = "priming tables of the trade (Hibberd; Draper)";

/// What fermentation leaves in the beer.
struct ResidualCarbonation {
    double celsius;
    double volumes;
};

inline constexpr std::array residual_carbonations = {ResidualCarbonation{20.0, 0.88},
                                                     ResidualCarbonation{0.0, 1.70}};

}  // namespace entrywise::published
