#pragma once

#include <string>
#include <vector>

#include "tools/validation/comparison.hpp"

namespace entrywise {

/// The brews whose bitterness was measured, each as a recipe tells it, with the interval that a check prints.
Quantity whole_brews();

/// The same brews by one formula.
struct BitternessFormula {
    std::string name;
    std::vector<Comparison> values;
};

/// Ours with the chill known and from the recipe alone, then the classical ones.
std::vector<BitternessFormula> bitterness_by_formula();

}  // namespace entrywise
