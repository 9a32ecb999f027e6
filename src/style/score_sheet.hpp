#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantity/quantities.hpp"
#include "style/attribute.hpp"

namespace entrywise {

enum class Charged { both, above, below };

/// Something that goes wrong as one thing and shows in one or several attributes. Its points are shared out
/// over the sections of the sheet; within a section it is charged once, however many attributes show it.
struct Cause {
    std::string name;
    std::vector<std::string>
        shown_by;              ///< `section.attribute`; `appearance.color` stands beside the attributes
    BySection<double> shares;  ///< fractions that add up to one
    BySection<std::optional<double>> at_most;  ///< points it can cost in a section, where less than all
    Charged charged = Charged::both;           ///< for too much of it, too little or either
    double weight = 1.0;                       ///< how much heavier or lighter it is charged than bitterness
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
    BySection<std::optional<double>> at_most;  ///< points a section can lose, where less than it carries
    std::vector<Cause> causes;
    /// Findings, as `flavor.bitterness.above`, that are one miss when they come together: in a section only
    /// the dearest of a list is charged.
    std::vector<std::vector<std::string>> one_miss;
    double one_step = 0.0;  ///< points in all for a noticed miss of one step of the scale
    double two_steps = 0.0;
    double three_steps = 0.0;
    double assumed_weight = 1.0;  ///< weight of an expectation that the guide takes for granted
    double in_range_weight =
        1.0;  ///< weight of a miss while the numbers behind it are inside the style's ranges
    double missing_declaration = 0.0;  ///< points for the first declaration that the entry lacks
    double other_kind = 0.0;  ///< points for hops, malt or yeast of another kind than the style names
    double threshold = 1.0;   ///< steps outside the accepted levels that half of all judges notice
    double spread = 1.0;      ///< standard deviation of that threshold over judges, in steps
    Span<double> well_made{0.0, 0.0};  ///< what a clean beer exactly to style is worth at the table
    double courtesy_floor = 0.0;       ///< the least that any beer is given
    std::vector<ScoreBand> bands;      ///< of the scoring guide, lowest first
};

}  // namespace entrywise
