#pragma once

#include "quantity/quantities.hpp"

namespace entrywise {

/// An amount as a brewer weighs it: whole grams below 100 g, tens below 2 kg, and twentieths of a kilogram
/// above.
Mass weighable(Mass mass);

}  // namespace entrywise
