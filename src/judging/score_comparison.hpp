#pragma once

#include <optional>
#include <vector>

#include "judging/sheet.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// The points that a judge gave, of those sections that were given any.
using SectionScores = BySection<std::optional<double>>;

/// A judge's points for a section beside what the recipe lets expect.
struct ScoreComparison {
    Section section = Section::overall;
    double given = 0.0;
    double expected = 0.0;  ///< points of a well made beer less those at risk
    double low = 0.0;       ///< eight in ten judges give between low and high
    double high = 0.0;
    std::optional<Direction> parts;  ///< above or below that span; nothing inside it
};

/// Compares the points of each section that has any. A well made beer is worth the same share of each section
/// as of the whole sheet. The span takes in what is uncertain of the recipe's points at risk, what a well
/// made beer is worth, and how judges scatter: 4 points of 50 (standard deviation) between judges of one beer
/// before they talk, shared out so that sections that scatter independently add up to it, each by the root of
/// its points. Half points count, as given and span are compared in these.
///
/// Source: no table of the scatter of beer judges is published; the 4 points are a working value beside
/// Hodgson, An examination of judge reliability at a major U.S. wine competition, Journal of Wine Economics
/// 3, 2008 (one judge, the same wine three times: typically 4 points up or down of 100), and the rule that
/// the judges of a beer end within 7 points of each other (Beer Judge Certification Program, Judge Procedures
/// Manual, 2010).
std::vector<ScoreComparison> compared_scores(const SectionScores& given, const Sheet& sheet,
                                             const ScoreSheet& score_sheet);

}  // namespace entrywise
