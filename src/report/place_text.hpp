#pragma once

#include <string>

#include "report/terminal.hpp"
#include "screening/best_place.hpp"

namespace entrywise {

/// Where else to enter: the style that leads the ranking of a guide, with what it would put at risk and save.
std::string place_text(const BestPlace& best, const TextStyle& style);

}  // namespace entrywise
