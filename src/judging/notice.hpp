#pragma once

#include "style/score_sheet.hpp"

namespace entrywise {

/// Chance that a judge notices a miss of so many steps: a normal psychometric function of the distance, none
/// at no distance. Source of the shape: ASTM E1432, Defining and calculating individual and group sensory
/// thresholds; threshold and spread are those of the score sheet.
double chance_of_notice(double steps, const ScoreSheet& score_sheet);

/// Points in all that a noticed miss of so many steps costs a cause of weight one. Rises faster than the
/// distance, as judges forgive a small miss and not a gross one.
double points_for(double steps, const ScoreSheet& score_sheet);

}  // namespace entrywise
