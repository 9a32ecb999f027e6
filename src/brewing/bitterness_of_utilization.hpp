#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// Bitterness by the classical reckoning, in which one milligram of iso-alpha-acids a liter is one IBU: alpha
/// acids added to a volume of cooled wort, times the share of them that is used. Source: common practice.
inline Bitterness bitterness_of_utilization(Concentration alpha_acids, Share utilization) {
    return in(alpha_acids, milligram_per_liter) * utilization.value() * ibu;
}

}  // namespace entrywise
