#pragma once

#include <array>

namespace entrywise::published {

inline constexpr const char* analyzed_beers =
    "Cutaia, Reid & Speers, Examination of the relationships between original, real and apparent extracts, "
    "Journal of the Institute of Brewing 115, 2009";

/// Extracts in degrees Plato, alcohol in percent by weight.
struct AnalyzedBeer {
    double original_extract;
    double apparent_extract;
    double real_extract;
    double alcohol;
};

inline constexpr AnalyzedBeer mean_of_221_beers{11.34, 2.01, 3.80, 3.82};

/// Real over apparent degree of fermentation.
struct FermentationRatio {
    double original_extract;
    double apparent_extract;
    double ratio;
};

/// 0.814 + 0.000862 times the original extract in 532 beers, standard error 0.0048. Rows at the mean apparent
/// attenuation of the beers, 82 %.
inline constexpr double fermentation_ratio_error = 0.0048;
inline constexpr std::array fermentation_ratios = {
    FermentationRatio{11.0, 1.98, 0.8235}, FermentationRatio{12.0, 2.16, 0.8243},
    FermentationRatio{14.0, 2.52, 0.8261}, FermentationRatio{16.0, 2.88, 0.8278},
    FermentationRatio{18.0, 3.24, 0.8295}};

inline constexpr const char* balling =
    "Balling, Die Bierbrauerei, 1865, by way of Cutaia, Reid & Speers, Journal of the Institute of Brewing "
    "115, 2009";

/// Real extract of usual beer is so many parts of the original and of the apparent extract.
inline constexpr double part_of_original_extract = 0.1886;
inline constexpr double part_of_apparent_extract = 0.8114;

/// Alcohol in percent by volume.
struct BeerByGravities {
    double original_gravity;
    double final_gravity;
    double alcohol;
};

inline constexpr BeerByGravities usual_beer{1.050, 1.010, 5.27};

}  // namespace entrywise::published
