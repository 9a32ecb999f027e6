#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "screening/screened.hpp"

namespace entrywise {

/// The entries at these places as a table of comma-separated values, a row each below a row of names: what
/// was entered, status, points at risk, the numbers with their intervals, where to enter, what is missing,
/// and last the columns that the entries brought along. The same columns always, save for those.
std::string screen_csv(const std::vector<Screened>& entries, const std::vector<std::size_t>& places);

}  // namespace entrywise
