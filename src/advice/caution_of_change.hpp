#pragma once

#include <vector>

#include "advice/caution.hpp"

namespace entrywise {

/// The cautions that a change calls for: those of what it makes that what was there before does not call for,
/// and one of gas that a cask does not bear.
std::vector<Caution> cautions_of_change(const Recipe& before, const Beer& beer_before, const Recipe& after,
                                        const Beer& beer_after);

}  // namespace entrywise
