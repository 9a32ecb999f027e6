#pragma once

#include <vector>

#include "quantity/estimate.hpp"
#include "style/attribute.hpp"
#include "style/perception.hpp"

namespace entrywise {

/// What a judge senses of a beer: for every attribute its level on the attribute's scale, as draws that
/// belong together with those of the beer.
struct Profile {
    Perception perception;  ///< the palate that sensed it
    ByAttribute<Estimate<double>> level;
    /// What the recipe leaves so open, or the beer hides so well, that a level says nothing: not to be
    /// judged.
    std::vector<Attribute> untold;
};

}  // namespace entrywise
