#pragma once

#include <vector>

#include "style/score_sheet.hpp"

namespace entrywise {

/// The chance that a miss is noticed, and the points that it is expected to cost a cause of weight one.
struct Miss {
    double noticed = 0.0;
    double points = 0.0;
};

/// What misses cost by a score sheet, worked out once for distances close to one another: a judging asks
/// thousands of times. Between them it runs straight, which is off by less than 0.001 points; beyond eight
/// steps, more than any scale holds, it stays level.
class CostOfMiss {
  public:
    explicit CostOfMiss(const ScoreSheet& score_sheet);

    /// For so many steps outside, above or below.
    Miss at(double steps) const;

  private:
    std::vector<Miss> misses_;
};

}  // namespace entrywise
