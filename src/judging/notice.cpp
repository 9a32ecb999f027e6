#include "judging/notice.hpp"

#include <array>
#include <cmath>
#include <numbers>

#include "base/piecewise.hpp"

namespace entrywise {

double chance_of_notice(double steps, const ScoreSheet& score_sheet) {
    if (steps == 0.0) {
        return 0.0;
    }
    const double deviate = (std::abs(steps) - score_sheet.threshold) / score_sheet.spread;
    return 0.5 * std::erfc(-deviate / std::numbers::sqrt2);
}

double points_for(double steps, const ScoreSheet& score_sheet) {
    // Beyond three steps a miss is gross; two more make it worse by a third (working value).
    constexpr double gross = 4.0 / 3.0;
    const std::array<Corner, 5> costs{{{0.0, 0.0},
                                       {1.0, score_sheet.one_step},
                                       {2.0, score_sheet.two_steps},
                                       {3.0, score_sheet.three_steps},
                                       {5.0, gross * score_sheet.three_steps}}};
    return on_line_through(costs, std::abs(steps));
}

}  // namespace entrywise
