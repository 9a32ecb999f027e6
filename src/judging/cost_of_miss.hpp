#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

#include "style/score_sheet.hpp"

namespace entrywise {

/// What misses cost by a score sheet, worked out once for distances close to one another: a judging asks
/// thousands of times. Between them it runs straight, which is off by less than 0.001 points; beyond eight
/// steps, more than any scale holds, it stays level.
class CostOfMiss {
  public:
    explicit CostOfMiss(const ScoreSheet& score_sheet);

    /// The points that a miss of so many steps, above or below, is expected to cost a cause of weight one.
    double points(double steps) const { return between(points_, steps); }

    /// The chance that it is noticed.
    double chance_of_notice(double steps) const { return between(noticed_, steps); }

  private:
    static constexpr double farthest = 8.0;
    static constexpr std::size_t to_a_step = 50;

    static double between(const std::vector<double>& table, double steps) {
        const double place = std::min(std::abs(steps), farthest) * to_a_step;
        const auto index = static_cast<std::size_t>(place);
        const double part = place - static_cast<double>(index);
        return table[index] + part * (table[index + 1] - table[index]);
    }

    std::vector<double> noticed_;
    std::vector<double> points_;
};

}  // namespace entrywise
