#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "screening/flight.hpp"
#include "screening/screened.hpp"

namespace entrywise {

/// The page of an evening, in one file, for the people who run it: how many entries stand how, a row each
/// that opens its detail, the flights, and the allergens. A small script sorts and filters; without it
/// everything can be read. `places` are those of the entries to tell of; they stand by status, what needs the
/// most attention first, and within one in the given order. `source` is where the entries came from, empty
/// where that must not be told.
std::string screen_page(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                        const std::vector<Flight>& flights, const std::string& source);

}  // namespace entrywise
