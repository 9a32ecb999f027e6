#pragma once

#include <string>
#include <vector>

#include "reading/library.hpp"
#include "tools/measure/real_recipes.hpp"
#include "tools/validation/comparison.hpp"

namespace entrywise {

/// A number that real recipes state of their beer, beside what the program makes of the recipe alone.
struct StatedNumber {
    std::string name;
    std::string unit;
    int decimals;
    std::vector<Comparison> values;
    std::vector<RealRecipe> recipes;  ///< of each value

    std::vector<Comparison> only(bool (*counts)(const RealRecipe&)) const;
};

/// Stated at 1.080 or more.
bool is_strong(const RealRecipe& recipe);

struct RealBeers {
    std::size_t count = 0;
    std::vector<StatedNumber> numbers;
};

/// Original and final gravity, attenuation and alcohol. Stated bitterness and color are calculations of the
/// sources and stay out.
RealBeers real_beers(const std::string& folder, const Library& library);

}  // namespace entrywise
