#pragma once

#include <string>
#include <vector>

#include "quantity/quantities.hpp"
#include "style/attribute.hpp"

namespace entrywise {

/// Something that goes wrong as one thing and shows in one or several attributes. Its points are shared out
/// over the sections of the sheet; within a section it is charged once, however many attributes show it.
struct Cause {
    std::string name;
    std::vector<std::string>
        shown_by;              ///< `section.attribute`; `appearance.color` stands beside the attributes
    BySection<double> shares;  ///< fractions that add up to one
    bool only_above = false;   ///< too little of it is not charged
    double weight = 1.0;       ///< how much heavier or lighter it is charged than bitterness
};

/// A band of the scoring guide, in whole points, both ends included.
struct ScoreBand {
    std::string name;
    double low = 0.0;
    double high = 0.0;
};

/// How many of the fifty points each section carries and what a miss costs.
struct ScoreSheet {
    BySection<double> points;
    std::vector<Cause> causes;
    double one_step = 0.0;  ///< points in all for a noticed miss of one step of the scale
    double two_steps = 0.0;
    double three_steps = 0.0;
    double assumed_weight = 1.0;  ///< weight of an expectation that the guide takes for granted
    double in_range_weight =
        1.0;                 ///< weight of a miss while the numbers behind it are inside the style's ranges
    double threshold = 1.0;  ///< steps outside the accepted levels that half of all judges notice
    double spread = 1.0;     ///< standard deviation of that threshold over judges, in steps
    Span<double> well_made{0.0, 0.0};  ///< what a clean beer exactly to style is worth at the table
    double courtesy_floor = 0.0;       ///< the least that any beer is given
    std::vector<ScoreBand> bands;      ///< of the scoring guide, lowest first
};

}  // namespace entrywise
