#include "judging/cost_of_miss.hpp"

#include "judging/notice.hpp"

namespace entrywise {

CostOfMiss::CostOfMiss(const ScoreSheet& score_sheet) {
    constexpr std::size_t distances = static_cast<std::size_t>(farthest) * to_a_step + 1;
    for (std::size_t index = 0; index < distances; ++index) {
        const double steps = static_cast<double>(index) / to_a_step;
        noticed_.push_back(entrywise::chance_of_notice(steps, score_sheet));
        points_.push_back(noticed_.back() * points_for(steps, score_sheet));
    }
    noticed_.push_back(noticed_.back());
    points_.push_back(points_.back());
}

}  // namespace entrywise
