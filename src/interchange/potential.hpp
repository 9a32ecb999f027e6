#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace entrywise {

/// The share of extract, as a recipe file writes it, in what raises a gallon of wort by a pound of it to this
/// gravity (`1.037`, `9.3 °P`); a gravity in points, such as 1037, counts as thousandths. Nothing for what is
/// no gravity of that kind.
/// A pound of sucrose in a US gallon of solution gives 1.0462: Bates et al., Polarimetry, saccharimetry and
/// the sugars, NBS Circular C440, 1942, table of sucrose solutions.
std::optional<std::string> extract_of_potential(std::string_view gravity);

/// Whether a gravity is written in points.
bool is_in_points(std::string_view gravity);

}  // namespace entrywise
