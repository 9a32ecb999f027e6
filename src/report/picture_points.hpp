#pragma once

#include <string>

#include "judging/sheet.hpp"

namespace entrywise {

/// The points of a section, a box each, with those at risk struck out from the right as a judge takes them
/// off. Below, a line holds eight in ten, with a mark at the middle.
std::string points_picture(std::string_view section, const PointsAtRisk& at_risk, double points);

/// Points at risk on a scale up to `most`: a line that holds eight in ten, with a mark at the middle.
std::string risk_picture(std::string_view of, const PointsAtRisk& at_risk, double most);

/// The points a judge gave beside those that are expected.
std::string score_picture(std::string_view section, double given, const Interval80<double>& expected,
                          double points);

}  // namespace entrywise
