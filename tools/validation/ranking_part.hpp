#pragma once

#include <cstddef>
#include <vector>

#include "tools/validation/part.hpp"
#include "tools/validation/sensitivity.hpp"

namespace entrywise {

/// The same constants, moved for the demo beers and for generated entries.
struct MovedConstants {
    std::size_t demo_beers;
    std::vector<ConstantMoved> of_demo_beers;
    std::size_t generated;
    std::vector<ConstantMoved> of_generated;
};

Part section_of_ranking(const MovedConstants& moved);

}  // namespace entrywise
