#pragma once

#include <map>
#include <string>
#include <vector>

#include "tests/support/agreement.hpp"
#include "tools/validation/comparison.hpp"
#include "tools/validation/part.hpp"
#include "tools/validation/whole_brews.hpp"

namespace entrywise {

/// All that the page tells.
struct Accuracy {
    std::string state;
    std::vector<Quantity> quantities;
    std::vector<BitternessFormula> formulas;
    std::map<Attribute, testing::Agreement> second_guide;
    std::map<Attribute, testing::Agreement> guide_beside_guide;
    Part real_beers_in_short;
    Part real_beers;
    Part ranking;
};

/// `flavor malt`.
std::string name_in_words(Attribute attribute);

std::string page_of(const Accuracy& accuracy);

}  // namespace entrywise
