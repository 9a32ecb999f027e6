#pragma once

#include <string>

#include "quantity/measures.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

/// `crystal medium from 550 g to 210 g`, as it is weighed.
std::string from_mass_to_mass(const std::string& ingredient, Mass from, Mass to, const Measures& measures);

/// The same as a wish: to cut, to raise, or to leave out what would hardly be left.
std::string change_of_mass(const std::string& ingredient, Mass from, Mass to, const Measures& measures);

}  // namespace entrywise
