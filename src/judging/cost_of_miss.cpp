#include "judging/cost_of_miss.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "judging/notice.hpp"

namespace entrywise {

namespace {

constexpr double farthest = 8.0;
constexpr std::size_t to_a_step = 50;
constexpr std::size_t distances = static_cast<std::size_t>(farthest) * to_a_step + 1;

}  // namespace

CostOfMiss::CostOfMiss(const ScoreSheet& score_sheet) {
    misses_.reserve(distances + 1);
    for (std::size_t index = 0; index < distances; ++index) {
        const double steps = static_cast<double>(index) / to_a_step;
        const double noticed = chance_of_notice(steps, score_sheet);
        misses_.push_back({noticed, noticed * points_for(steps, score_sheet)});
    }
    misses_.push_back(misses_.back());
}

Miss CostOfMiss::at(double steps) const {
    const double place = std::min(std::abs(steps), farthest) * to_a_step;
    const auto index = static_cast<std::size_t>(place);
    const double part = place - static_cast<double>(index);
    const Miss& near = misses_[index];
    const Miss& far = misses_[index + 1];
    return {near.noticed + part * (far.noticed - near.noticed),
            near.points + part * (far.points - near.points)};
}

}  // namespace entrywise
