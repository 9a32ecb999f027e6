#pragma once

#include <vector>

#include "advice/caution.hpp"
#include "advice/correction.hpp"
#include "brewing/deviates.hpp"

namespace entrywise {

/// The cautions that a change calls for: those of what it makes that what was there before does not call for,
/// and one of gas that a cask does not bear.
std::vector<Caution> cautions_of_change(const Recipe& before, const Beer& beer_before, const Recipe& after,
                                        const Beer& beer_after);

/// The same of what would bring a finding in, each told as one of what is advised. The dice are those of
/// `beer`, thrown anew for each.
std::vector<Caution> cautions_of_corrections(const std::vector<Correction>& corrections, const Recipe& recipe,
                                             const Beer& beer, Deviates& dice);

}  // namespace entrywise
