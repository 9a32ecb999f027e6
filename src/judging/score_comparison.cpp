#include "judging/score_comparison.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "brewing/deviates.hpp"

namespace entrywise {

namespace {

constexpr double scatter_of_judges = 4.0;

double all_points(const ScoreSheet& score_sheet) {
    double points = 0.0;
    for (const Section section : sheet_sections) {
        points += score_sheet.points[section];
    }
    return points;
}

/// To the half point that judges give.
double in_halves(double points) {
    return 0.5 * std::round(2.0 * points);
}

ScoreComparison compared(Section section, double given, const PointsAtRisk& at_risk,
                         const ScoreSheet& score_sheet) {
    const double points = score_sheet.points[section];
    const double share = points / all_points(score_sheet);
    const double well_made = 0.5 * (score_sheet.well_made.low + score_sheet.well_made.high) * share;
    const double well_made_half_width =
        0.5 * (score_sheet.well_made.high - score_sheet.well_made.low) * share;
    const double scatter = Deviates::eight_in_ten * scatter_of_judges * std::sqrt(share);
    const double expected = well_made - at_risk.median;
    const double below = std::hypot(at_risk.high - at_risk.median, well_made_half_width, scatter);
    const double above = std::hypot(at_risk.median - at_risk.low, well_made_half_width, scatter);
    const auto on_the_sheet = [&](double value) { return in_halves(std::clamp(value, 0.0, points)); };
    ScoreComparison comparison{.section = section,
                               .given = given,
                               .expected = std::clamp(expected, 0.0, points),
                               .low = on_the_sheet(expected - below),
                               .high = on_the_sheet(expected + above),
                               .parts = {}};
    if (in_halves(given) < comparison.low) {
        comparison.parts = Direction::below;
    } else if (in_halves(given) > comparison.high) {
        comparison.parts = Direction::above;
    }
    return comparison;
}

}  // namespace

std::vector<ScoreComparison> compared_scores(const SectionScores& given, const Sheet& sheet,
                                             const ScoreSheet& score_sheet) {
    std::vector<ScoreComparison> comparisons;
    for (const Section section : sheet_sections) {
        if (given[section]) {
            comparisons.push_back(compared(section, *given[section], sheet.at_risk[section], score_sheet));
        }
    }
    return comparisons;
}

}  // namespace entrywise
