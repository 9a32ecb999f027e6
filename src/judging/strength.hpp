#pragma once

#include <vector>

#include "judging/deviation.hpp"
#include "judging/sheet.hpp"
#include "judging/tariff.hpp"

namespace entrywise {

/// What a beer does right by its style: attributes that the style states and is known by, likely inside, with
/// no finding of the same name or of the same cause. What marks the style most comes first; at most three,
/// and no attribute twice.
std::vector<Strength> strengths_of(const std::vector<Deviation>& deviations,
                                   const std::vector<Finding>& findings, const Beer& beer,
                                   const Profile& profile, const Tariff& tariff);

}  // namespace entrywise
