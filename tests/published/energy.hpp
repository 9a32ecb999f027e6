#pragma once

namespace entrywise::published {

inline constexpr const char* food_tables = "USDA FoodData Central, beer, regular, from memory";

/// Alcohol in percent by weight, real extract in degrees Plato (carbohydrate and protein), kcal in 100 g.
struct RegularBeer {
    double alcohol;
    double real_extract;
    double gravity;
    double kilocalories;
};

inline constexpr RegularBeer regular_beer{3.9, 4.1, 1.008, 43.0};

}  // namespace entrywise::published
