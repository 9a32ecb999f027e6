#pragma once

#include <string>
#include <vector>

#include "report/terminal.hpp"
#include "screening/flight.hpp"
#include "screening/screened.hpp"

namespace entrywise {

/// An evening's entries for the people who run it: a line each, then what to talk about entry by entry, then
/// the flights, allergens, and how many stand how. `places` are those of the entries to tell of, in the order
/// to tell them in; the flights are told as they are given.
std::string screen_text(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                        const std::vector<Flight>& flights, const TextStyle& style);

}  // namespace entrywise
