#pragma once

#include <string>

#include "tools/validation/part.hpp"
#include "tools/validation/real_beers.hpp"

namespace entrywise {

/// What is weak of them.
Part in_short(const RealBeers& beers);

/// All of them, worked out by the program in that state.
Part section_of_real_beers(const RealBeers& beers, const std::string& state);

}  // namespace entrywise
